/**
 * One number of the box: stepper, field, and a ruler with the band where every rule it moves is kept.
 *
 *     <RulerControl name="lidLip" store={store} known={known} />
 *
 * `store` must have the whole model, since what gives way needs the heights of the box. `known` are the bands of the
 * example, worked out while the page is built (`known-bands.ts`); without it they are asked for. Styles: `ruler-control.css`.
 */

import { useComputed, useSignal } from '@preact/signals';
import { useId, useRef } from 'preact/hooks';
import { type NumberField, nextStep, printOf, stepOf } from '../../box/core/field.ts';
import { givingWay } from '../../box/design/gives-way.ts';
import { fields, type NumberName } from '../../box/subjects/inputs.ts';
import type { Values } from '../../box/whole/index.ts';
import { seenBy, shownRulers } from '../../figures/parts/my-ruler.ts';
import { format, toField } from '../../units/index.ts';
import { clean } from '../../units/rounding.ts';
import { BelowField } from '../kit/BelowField.tsx';
import { warningOf } from '../kit/Control.tsx';
import { useRested } from '../kit/follow.ts';
import { Stepper } from '../kit/Stepper.tsx';
import { HeardUnit, Unit } from '../kit/Unit.tsx';
import { useSlide } from '../kit/use-slide.ts';
import type { Store } from '../kit/use-store.ts';
import { useTypedNumber } from '../kit/use-typed-number.ts';
import { BandSays } from './BandSays.tsx';
import { Ruler } from './Ruler.tsx';
import { countAt, endsOf, isBinary, windowOf } from './ruler-window.ts';
import { type KnownBands, useBands } from './use-bands.ts';
import { useSize } from './use-size.ts';

interface Props {
  name: NumberName;
  store: Store;
  known?: KnownBands;
}

/** A hand that rests so long begins anew: what gives way is reckoned from the box as it is then, ms. */
const anew = 700;

export function RulerControl({ name, store, known }: Props) {
  const id = useId();
  const field: NumberField = fields[name];
  const { kind } = field;
  const value = useComputed(() => store.values.value[name]).value;
  const warning = useComputed(() => warningOf(field, store.values.value[name], store.values.value)).value;
  const system = store.units.value;
  const ruler = shownRulers.value[system];
  const step = stepOf(field, ruler);
  const ends = endsOf(field, step);
  const bands = useBands(name, store, known);
  /** The box as it was when the hand began: so a number that goes there and back leaves nothing behind. */
  const base = useRef<{ values: Values; at: number }>();
  const set = (to: number) => {
    const now = performance.now();
    if (!base.current || now - base.current.at > anew)
      base.current = { values: store.values.peek(), at: now };
    base.current.at = now;
    used.value = true;
    store.set(givingWay(base.current.values, name, to, ruler));
    return undefined;
  };
  /** A warning may stand at several fields: the one the reader changed tells it. */
  const used = useSignal(false);
  const number = useTypedNumber({ ...field, value, system, set });
  const setCount = (count: number) => {
    const within = Math.min(ends[1], Math.max(ends[0], count));
    number.drop();
    if (Math.abs(within * step - store.values.peek()[name]) > 1e-9) set(clean(within * step));
  };
  const at = value / step;
  const show = (spoken: boolean) => format(value, kind, { ...seenBy(system, printOf(field)), spoken });
  const { ref, size } = useSize({ width: 372, height: 46 });
  const width = size.value.width;
  const rested = useRested(Math.round(at), anew);
  const binary = kind === 'length' && isBinary(step, ruler);
  const shown = windowOf(ends, rested, width, binary);
  // The pointer may not leave the drawing while the hand moves on.
  const window = at < shown.from || at > shown.to ? windowOf(ends, Math.round(at), width, binary) : shown;
  const pointer = useSlide({
    stepAt: (x) => countAt(x, window, width),
    now: () => store.values.peek()[name] / step,
    set: setCount,
  });
  const message = number.message ? `${number.message} ${show(false)} stays in use.` : warning;
  const help = !number.message && field.help;
  const described = [message && `${id}m`, help && `${id}h`, `${id}b`].filter(Boolean).join(' ');
  return (
    <div class="control ruler-control" data-input={name}>
      <label for={id}>
        {field.label}
        <HeardUnit kind={kind} system={system} />
      </label>
      <Stepper label={field.label} onStep={(by) => setCount(nextStep(at, by))}>
        <input {...number.input} id={id} aria-describedby={described || undefined} />
        <Unit kind={kind} system={system} />
      </Stepper>
      <div class="ruler" ref={ref} {...pointer}>
        <input
          type="range"
          aria-label={`${field.label}, slider`}
          aria-valuetext={show(true)}
          min={ends[0]}
          max={ends[1]}
          step={1}
          value={Math.round(at)}
          onInput={({ currentTarget }) => setCount(Number(currentTarget.value))}
          onKeyDown={(event) => {
            const by = { PageUp: 4, PageDown: -4 }[event.key];
            if (!by) return;
            event.preventDefault();
            setCount(Math.round(at) + by);
          }}
        />
        <Ruler
          window={window}
          width={width}
          at={at}
          step={step}
          binary={binary}
          bands={bands.value.bands}
          label={(count) => toField(clean(count * step), kind, system, true)}
        />
      </div>
      <BandSays id={`${id}b`} of={bands.value} field={field} store={store} />
      <BelowField id={id} message={message} isNew={Boolean(number.message) || used.value} help={help} />
    </div>
  );
}
