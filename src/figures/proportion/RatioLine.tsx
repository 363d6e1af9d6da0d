/** Ratios from square to two to one on a line: the named ones, the usual band, and where the reader's box stands. */
import { scaleLinear } from 'd3-scale';
import { usualRatio } from '../../box/subjects/proportion/verdicts.ts';
import type { Values } from '../../box/whole/index.ts';
import { namedRatios } from '../../calc/proportion/named-ratios.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { ratioText } from './ratio-text.ts';

const [first, last] = [1, 2.1];
const [low, high] = usualRatio;
const [left, right] = [14, 336];
const axis = 62;
/** Place of a ratio on the line; beyond its ends, the end. */
const place = scaleLinear([first, last], [left, right]).clamp(true);

/** Height of each name above the line, so that neighbors do not touch; 8:5 keeps to the left of the golden ratio. */
const names = namedRatios.map(({ name, value }) => ({
  text: name.replace('√2:1', '√2'),
  x: place(value),
  y: name === 'golden' ? 10 : name === '8:5' || name === '√2:1' ? 28 : 46,
  shift: name === '8:5' ? -8 : 0,
}));

/** A ratio of the reader's box: a pointer up to the line, with its word. */
function Mark({ word, ratio, y, toLeft }: { word: string; ratio: number; y: number; toLeft: boolean }) {
  const x = place(ratio);
  const beyond = ratio > last ? ' →' : '';
  return (
    <>
      <path class="force" d={`M${x} ${y} V${axis + 1}`} marker-end="url(#arrow)" />
      <Label class="strong" x={x + (toLeft ? -6 : 6)} y={y} anchor={toLeft ? 'end' : 'start'}>
        {`${word} ${ratioText(ratio)}${beyond}`}
      </Label>
    </>
  );
}

export function RatioLine({ values: v }: { values: Values }) {
  const isLong = v.outsideRatio >= 1;
  const outside = isLong ? v.outsideRatio : 1 / v.outsideRatio;
  const inside = isLong ? v.insideRatio : 1 / v.insideRatio;
  // Near the left end there is no room for a word on the left; then the two swap rows, so that no line crosses a word.
  const isNearEnd = place(outside) < 100;
  const rows = isNearEnd ? { outside: 114, inside: 88 } : { outside: 88, inside: 114 };
  return (
    <Drawing
      view={[0, 0, 350, 138]}
      title="Ratios on a line"
      description={`Usual choices run from ${low} to ${high}. The outside is at ${ratioText(outside)}, the inside at ${ratioText(inside)}.`}
    >
      <rect class="usual" x={place(low)} y={axis - 8} width={place(1.8) - place(low)} height={66} />
      <Label x={place((low + high) / 2)} y={130}>
        usual, {low} to {high}
      </Label>
      <line class="axis" x1={left} y1={axis} x2={right} y2={axis} />
      {names.map(({ text, x, y, shift }) => (
        <g key={text}>
          <line class="thin" x1={x} y1={y + 8} x2={x} y2={axis} />
          <Label x={x + shift} y={y}>
            {text}
          </Label>
        </g>
      ))}
      <Mark word="outside" ratio={outside} y={rows.outside} toLeft={!isNearEnd} />
      {Number.isFinite(inside) && (
        <Mark word="inside" ratio={inside} y={rows.inside} toLeft={place(inside) > 240} />
      )}
    </Drawing>
  );
}
