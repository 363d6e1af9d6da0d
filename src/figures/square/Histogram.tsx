/** How often each size came out: bars over a line of lengths, with marks for half of them, 95 of 100 and the worst case. */
import { scaleLinear } from 'd3-scale';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

const width = 350;
const text = textSize(width);
const [left, right, top, foot] = [4, width - 4, text * 3.6, 150];
const bins = 24;
const fine = { digits: 2, denominator: 1000 } as const;
/** Width that the words of a mark take. */
const room = text * 11;

interface HistogramProps {
  /** mm, none negative. */
  values: readonly number[];
  half: number;
  most: number;
  worst: number;
  /** What is counted: "gap at the worst corner". */
  what: string;
}

/** How many values fall in each of `bins` equal stretches from 0 to `end`; the last holds what lies beyond. */
export function counted(values: readonly number[], end: number): number[] {
  const counts = Array.from({ length: bins }, () => 0);
  for (const value of values) {
    const bin = Math.min(bins - 1, Math.max(0, Math.floor((value / end) * bins)));
    counts[bin] = (counts[bin] ?? 0) + 1;
  }
  return counts;
}

export function Histogram({ values, half, most, worst, what }: HistogramProps) {
  const end = Math.max(worst, most, 0.01) * 1.02;
  const x = scaleLinear([0, end], [left, right]);
  const counts = counted(values, end);
  const y = scaleLinear([0, Math.max(1, ...counts)], [foot, top]);
  const wide = (right - left) / bins;
  const marks = [
    { at: half, words: 'half below ', row: 2.6, side: 'end' },
    { at: most, words: '95 of 100 below ', row: 1.6, side: 'start' },
    { at: worst, words: 'worst case ', row: 0.6, side: 'end' },
  ] as const;
  return (
    <Drawing
      view={[0, 0, width, foot + text * 3]}
      title={`How often each ${what} came out`}
      description={`${values.length} boxes: half below ${said(half, 'length', fine)}, 95 of 100 below ${said(most, 'length', fine)}, worst case ${said(worst, 'length', fine)}.`}
    >
      {counts.map((count, bin) =>
        count === 0 ? null : (
          <rect
            key={bin}
            class="wood"
            x={left + bin * wide}
            y={y(count)}
            width={wide}
            height={foot - y(count)}
          />
        ),
      )}
      <line class="axis" x1={left} x2={right} y1={foot} y2={foot} />
      {marks.map(({ at, row }) => (
        <line key={row} class="thin" x1={x(at)} x2={x(at)} y1={text * row} y2={foot + 5} />
      ))}
      {marks.map(({ at, words, row, side }) => {
        // The words stand on the side where no other line runs, unless there is no room for them.
        const fits = side === 'end' ? x(at) > room : x(at) < width - room;
        const anchor = fits === (side === 'end') ? 'end' : 'start';
        return (
          <NumberLabel
            key={words}
            x={x(at) + (anchor === 'start' ? 4 : -4)}
            y={text * row}
            anchor={anchor}
            class="on-lines"
            value={at}
            kind="length"
            digits={2}
            before={words}
          />
        );
      })}
      <Label x={left} y={foot + text * 1.2} anchor="start">
        0
      </Label>
      <NumberLabel x={right} y={foot + text * 1.2} anchor="end" value={end} kind="length" digits={2} />
      <Label x={width / 2} y={foot + text * 2.4}>
        {what}
      </Label>
    </Drawing>
  );
}
