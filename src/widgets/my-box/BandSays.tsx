/** The sentence below a ruler: "Keeps every rule from 3/16 in to 1/4 in. why?", with a mark before it where the number lies outside. */
import { type NumberField, printOf } from '../../box/core/field.ts';
import type { Stretch } from '../../box/design/trials.ts';
import { verdicts } from '../../box/whole/index.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import type { Store } from '../kit/use-store.ts';
import { Mark } from '../verdicts/Mark.tsx';
import { Fold } from './Fold.tsx';
import type { ShownBands } from './use-bands.ts';
import { WhyRules } from './WhyRules.tsx';

interface Props {
  id: string;
  of: ShownBands;
  field: NumberField;
  store: Store;
}

const End = ({ field, value }: { field: NumberField; value: number }) => (
  <Quantity
    value={value}
    kind={field.kind}
    {...printOf(field)}
    {...(field.as === 'fine' && { as: 'exact' })}
  />
);

/** A stretch in words; an end of the field is no limit of a rule. */
function From({ field, stretch: [from, to] }: { field: NumberField; stretch: Stretch }) {
  const step = 1e-6 + (field.high - field.low) * 1e-6;
  const isLow = from > field.low + step;
  const isHigh = to < field.high - step;
  if (to - from < step)
    return (
      <>
        at <End field={field} value={from} /> only
      </>
    );
  if (isLow && isHigh)
    return (
      <>
        from <End field={field} value={from} /> to <End field={field} value={to} />
      </>
    );
  if (isHigh)
    return (
      <>
        up to <End field={field} value={to} />
      </>
    );
  return isLow ? (
    <>
      from <End field={field} value={from} /> on
    </>
  ) : (
    <>wherever it stands</>
  );
}

export function BandSays({ id, of: { bands, failed }, field, store }: Props) {
  if (failed)
    return (
      <p class="band-says message" id={id} role="status">
        {failed}
      </p>
    );
  if (!bands || bands.isFree) return <p class="band-says" id={id} />;
  const { kept, now, limits } = bands;
  const value = store.values.value;
  const told = verdicts(value).filter(({ check }) => limits.checks.includes(check.id));
  return (
    <div class="band-says">
      <p id={id}>
        {now !== 'kept' && (
          <strong class={now}>
            <Mark of={now === 'breaks' ? 'breaks' : 'look'} /> {now === 'breaks' ? 'breaks' : 'outside'} ·{' '}
          </strong>
        )}
        {kept.length === 0 ? (
          'No value keeps every rule that this number moves.'
        ) : (
          <>
            Keeps every rule{' '}
            {kept.map((stretch, place) => (
              <span key={stretch[0]}>
                {place > 0 && (place === kept.length - 1 ? ', and ' : ', ')}
                <From field={field} stretch={stretch} />
              </span>
            ))}
            .
          </>
        )}
      </p>
      {told.length > 0 && <WhyRules verdicts={told} store={store} />}
      {told.length === 0 && limits.refusals.length > 0 && (
        <Fold summary="why?">{() => limits.refusals.map((what) => <p key={what}>{what}</p>)}</Fold>
      )}
    </div>
  );
}
