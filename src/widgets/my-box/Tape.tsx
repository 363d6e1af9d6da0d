/**
 * A warning: what it says with its numbers, the smallest change that mends it, why it is so, other ways, and the way to
 * accept it on purpose. A brief one is a line with its change.
 */

import type { Verdict } from '../../box/core/verdict.ts';
import { mendRefusal } from '../../box/design/mend-refusal.ts';
import type { Values } from '../../box/whole/index.ts';
import { shownRulers } from '../../figures/parts/my-ruler.ts';
import { InBoth } from '../kit/told.tsx';
import type { Store } from '../kit/use-store.ts';
import { Mark } from '../verdicts/Mark.tsx';
import { Accept } from './Accept.tsx';
import { Fold } from './Fold.tsx';
import { MendText } from './MendText.tsx';
import type { Mend } from './mend.ts';
import { nameOfPart } from './parts.ts';
import { WhyRules } from './WhyRules.tsx';
import { firstSentence, type Unkept, type Warning } from './warnings.ts';

export interface TapeProps {
  /** Several where one change mends them all; the worst first. */
  warnings: readonly Warning[];
  /** The smallest first; undefined until they are worked out. */
  mends: readonly Mend[] | undefined;
  brief: boolean;
  store: Store;
  onMend: (mend: Mend) => void;
  onPart: (warning: Warning) => void;
}

/** The numbers of a verdict: what it is, and what is usual. */
const Numbers = ({ verdict }: { verdict: Verdict<Values> }) => (
  <>
    {verdict.check.label}: <InBoth verdict={verdict} part={({ measured }) => measured} />
    {verdict.usual.some(Number.isFinite) && (
      <>
        , usual <InBoth verdict={verdict} part={({ usual }) => usual} />
      </>
    )}
  </>
);

function Says({ warning, brief }: { warning: Warning; brief: boolean }) {
  if ('refusal' in warning) return <>{warning.refusal.what}</>;
  const { verdict } = warning;
  if (brief) return <>{firstSentence(verdict.because)}</>;
  return (
    <>
      {firstSentence(verdict.because)}{' '}
      <span class="tape-numbers">
        <Numbers verdict={verdict} />.
      </span>
    </>
  );
}

export function Tape({ warnings, mends, brief, store, onMend, onPart }: TapeProps) {
  const [first] = warnings;
  if (!first) return null;
  const unkept = warnings.filter((one): one is Unkept => 'verdict' in one);
  // What mends a thing that cannot be built is wanted at once.
  const known =
    mends ??
    ('refusal' in first
      ? [mendRefusal(store.values.value, first.refusal, shownRulers.value[store.units.value]) ?? []].flat()
      : undefined);
  const [mend, ...others] = known ?? [];
  return (
    <>
      <div class="tape-says">
        {warnings.map((warning, place) => (
          <p key={warning.id}>
            <strong class="tape-state">
              <Mark of={warning.breaks ? 'breaks' : 'look'} />{' '}
              {place > 0 ? 'and' : first.breaks ? 'breaks' : 'look'}
              {place === 0 && ' · '}
            </strong>
            {place === 0 && (
              <a
                href={`#${warning.part}`}
                onClick={(event) => {
                  event.preventDefault();
                  onPart(warning);
                }}
              >
                {nameOfPart[warning.part]}
              </a>
            )}{' '}
            <Says warning={warning} brief={brief} />
          </p>
        ))}
      </div>
      {mend ? (
        <button type="button" class="quiet mend" onClick={() => onMend(mend)}>
          <MendText mend={mend} brief={brief} />
        </button>
      ) : (
        !brief && (
          <p class="no-mend">
            {'refusal' in first
              ? first.refusal.fix
              : known && 'No single number does it without breaking something else.'}
          </p>
        )
      )}
      {!brief && unkept.length > 0 && (
        <div class="tape-more">
          <WhyRules verdicts={unkept.map(({ verdict }) => verdict)} store={store} />
          {others.length > 0 && (
            <Fold summary="other ways">
              {() => (
                <ul>
                  {others.map((other) => (
                    <li key={`${other.input} ${other.to}`}>
                      <button type="button" class="quiet" onClick={() => onMend(other)}>
                        <MendText mend={other} />
                      </button>
                    </li>
                  ))}
                </ul>
              )}
            </Fold>
          )}
          <Fold summary="I know, because …">
            {() => unkept.map(({ id }) => <Accept key={id} check={id} store={store} />)}
          </Fold>
        </div>
      )}
    </>
  );
}
