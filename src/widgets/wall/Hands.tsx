/**
 * A show of hands: a count for each outcome or range, and afterwards the counts as pencil bars beside the truth. Where
 * outcomes are drawn the bars stand in them (`wall.css`).
 */
import { useEffect, useId, useLayoutEffect, useRef } from 'preact/hooks';
import { units } from '../../notebook/units.ts';
import type { GuessSpec } from '../lesson/guess-spec.ts';
import { inHands, nameOfRange, rangeOf, rangesOf } from './hands.ts';
import type { Slide } from './slides.ts';
import { hands, isOpen, panel, setHands } from './state.ts';

interface Props {
  slide: Slide;
  spec: GuessSpec;
  /** Where the truth lies, in the stored unit; for a number. */
  truth: number | undefined;
}

/** Most hands in a room. */
const mostHands = 99;

const namesOf = (spec: GuessSpec): readonly string[] =>
  spec.type === 'pick'
    ? Object.values(spec.options)
    : rangesOf(spec.field, units.value).map((range) => nameOfRange(range, spec.field.kind, units.value));

export function Hands({ slide, spec, truth }: Props) {
  const counts = hands.value[slide.name] ?? [];
  const most = Math.max(1, ...counts.map((count) => count ?? 0));
  useBars(slide, spec, counts, most);
  if (panel.value === 'hands' && !isOpen.value)
    return <Count slide={slide} names={namesOf(spec)} counts={counts} />;
  if (spec.type === 'pick' || !counts.some((count) => count > 0)) return null;
  const right = isOpen.value && truth !== undefined ? rangeOf(rangesOf(spec.field, units.value), truth) : -1;
  return (
    <dl class="wall-hands" aria-label="Show of hands">
      {namesOf(spec).map((name, at) => [
        <dt key={name} class={at === right ? 'is-true' : undefined}>
          {name}
        </dt>,
        <dd
          key={`${name}n`}
          style={{ '--hands': String((counts[at] ?? 0) / most) }}
          class={at === right ? 'is-true' : undefined}
        >
          <span>
            {counts[at] ?? 0}
            {at === right && ' true'}
          </span>
        </dd>,
      ])}
    </dl>
  );
}

/** Fields to count in, one below the other: Enter goes on to the next, and from the last back to the figure. */
function Count({
  slide,
  names,
  counts,
}: {
  slide: Slide;
  names: readonly string[];
  counts: readonly number[];
}) {
  const id = useId();
  const root = useRef<HTMLFormElement>(null);
  const field = (at: number) => root.current?.querySelectorAll('input')[at];
  // At once: a count may be typed right after the key.
  useLayoutEffect(() => field(0)?.focus(), []);
  return (
    <form
      class="wall-count"
      aria-label="Show of hands"
      ref={root}
      onSubmit={(event) => {
        event.preventDefault();
        panel.value = undefined;
      }}
    >
      {names.map((name, at) => [
        <label key={name} for={`${id}${at}`}>
          {name}
        </label>,
        <input
          key={`${name}n`}
          id={`${id}${at}`}
          type="text"
          inputMode="numeric"
          autocomplete="off"
          value={counts[at] ?? ''}
          onFocus={({ currentTarget }) => currentTarget.select()}
          onInput={({ currentTarget }) =>
            setHands(slide, at, Math.min(mostHands, Number.parseInt(currentTarget.value, 10) || 0))
          }
          onKeyDown={(event) => {
            const next =
              event.key === 'Enter' || event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
            const to = next && field(at + next);
            if (!to) return;
            event.preventDefault();
            to.focus();
          }}
        />,
      ])}
      <button type="submit">counted</button>
    </form>
  );
}

/** Outcomes that are drawn carry their hands themselves, so that the page keeps drawing them. */
function useBars({ figure }: Slide, spec: GuessSpec, counts: readonly number[], most: number): void {
  useEffect(() => {
    if (spec.type !== 'pick') return;
    const any = counts.some((count) => count > 0);
    for (const [at, outcome] of figure.querySelectorAll<HTMLElement>('.outcome:is(label)').entries()) {
      if (any) outcome.dataset.hands = inHands(counts[at] ?? 0);
      else delete outcome.dataset.hands;
      outcome.style.setProperty('--hands', String((counts[at] ?? 0) / most));
    }
  }, [counts, most]);
}
