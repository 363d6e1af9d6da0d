/** A usual range on a piece of ruler, with the number of the reader's box on it and where something breaks. */

import { rangeFor } from '../../box/core/tell.ts';
import type { Range, Verdict } from '../../box/core/verdict.ts';
import type { Values } from '../../box/whole/index.ts';
import { fieldUnit, type UnitSystem } from '../../units/index.ts';
import { ticksOf } from './ticks.ts';

interface Props {
  verdict: Verdict<Values>;
  values: Values;
}

/** Air beside what must be seen, as a share of it. */
const margin = 0.35;
/** Numbers that have room on a phone. */
const most = 6;
const percent = (share: number) => `${(Math.min(1, Math.max(0, share)) * 100).toFixed(1)}%`;
const finite = (numbers: readonly number[]) => numbers.filter(Number.isFinite);

/** What is seen of the numbers: all that the bar is about, and some air on both sides. */
function endsOf(measured: number, usual: Range, works: Range): Range | undefined {
  const seen = finite([measured, ...usual]);
  const limits = finite(works);
  if (seen.length === 0 || seen.length + limits.length < 2) return undefined;
  const [least, greatest] = [Math.min(...seen, ...limits), Math.max(...seen, ...limits)];
  const air = (greatest - least || Math.abs(greatest) || 1) * margin;
  // Nothing is less than nothing, unless less than nothing is what breaks.
  const from = least >= 0 && !(works[0] === 0) ? Math.max(0, least - air) : least - air;
  return [from, greatest + air];
}

/** Both readers' bars stand in the page; the style sheet shows one. */
export const RangeBar = (props: Props) => (
  <>
    <Bar {...props} system="mm" />
    <Bar {...props} system="inch" />
  </>
);

function Bar({ verdict, values, system }: Props & { system: UnitSystem }) {
  const { measured, check } = verdict;
  const usual = rangeFor(verdict, system);
  const works = check.works?.(values) ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const ends = endsOf(measured, usual, works);
  if (!ends) return null;
  const [from, to] = ends;
  const at = (value: number) => (value - from) / (to - from);
  const zone = ([low, high]: Range) => {
    const [left, right] = [Math.max(0, at(low)), Math.min(1, at(high))];
    return { left: percent(left), width: percent(right - left) };
  };
  const word = (range: Range) => {
    const [left, right] = [Math.max(0, at(range[0])), Math.min(1, at(range[1]))];
    return { left: percent((left + right) / 2) };
  };
  const broken = (
    [
      [Number.NEGATIVE_INFINITY, works[0]],
      [works[1], Number.POSITIVE_INFINITY],
    ] as const
  ).filter(([low, high]) => at(high) > 0.02 && at(low) < 0.98);
  const ticks = ticksOf(check.kind, system, from, to, most);
  /** The unit stands once, where it has room. */
  const named = ticks.findLast((tick) => at(tick.at) > 0.08 && at(tick.at) < 0.9);
  const unit = fieldUnit(check.kind, system);
  return (
    <div class={`range-bar ${system}`} aria-hidden="true">
      <div class="range-words">
        <span style={word(usual)}>usual</span>
        {broken.map((range) => (
          <span key={range[0]} style={word(range)}>
            breaks
          </span>
        ))}
      </div>
      <div class="range-zones">
        {broken.map((range) => (
          <span key={range[0]} class="range-breaks" style={zone(range)} />
        ))}
        <span class="range-usual" style={zone(usual)} />
      </div>
      <div class="range-ruler">
        {ticks.map((tick) => (
          <span key={tick.at} style={{ left: percent(at(tick.at)) }}>
            {tick.text}
            {tick === named && ` ${unit}`}
          </span>
        ))}
      </div>
      {Number.isFinite(measured) && <span class="range-mine" style={{ left: percent(at(measured)) }} />}
    </div>
  );
}
