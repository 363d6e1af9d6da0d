/** Strength (square) and stiffness (cube) left behind a groove, against its depth; the usual band and the reader's groove. */
import type { Values } from '../box/values.ts';
import { format } from '../units/index.ts';
import { Drawing } from './parts/Drawing.tsx';
import { Label, NumberLabel } from './parts/Label.tsx';

const [x0, x1, y0, y1] = [44, 336, 34, 204];
/** Share of the wall, and percent left, to the drawing. */
const x = (share: number) => x0 + share * (x1 - x0);
const y = (percent: number) => y1 - (percent / 100) * (y1 - y0);
const percent = (value: number) => format(value, 'percent', { system: 'mm', digits: 0 });

const steps = Array.from({ length: 31 }, (_, index) => index / 30);
/** What is left of a power of the thickness, drawn once. */
const curve = (power: number) =>
  `M${steps.map((share) => `${x(share).toFixed(1)} ${y(100 * (1 - share) ** power).toFixed(1)}`).join('L')}`;
const strength = curve(2);
const stiffness = curve(3);

const marks = [
  [0, '0'],
  [1 / 3, '1/3'],
  [1 / 2, '1/2'],
  [1, 'all'],
] as const;

export function WebLeft({ values: v }: { values: Values }) {
  const share = Math.min(1, 1 - v.web / v.wall);
  const at = x(share);
  const none = v.web <= 0;
  const [left, stiff] = none ? [0, 0] : [v.webStrength, v.webStiffness];
  /** Right of the mark and above the upper curve is always free. */
  const words = { x: Math.min(at + 9, 240), anchor: 'start' as const };
  return (
    <Drawing
      view={[0, 0, 350, 246]}
      title="What is left behind the groove"
      description={
        none
          ? 'The groove is as deep as the wall: nothing is left.'
          : `A groove ${percent(share * 100)} of the wall deep leaves ${percent(left)} of the strength and ${percent(stiff)} of the stiffness.`
      }
    >
      <rect class="usual" x={x(1 / 3)} y={y0} width={x(1 / 2) - x(1 / 3)} height={y1 - y0} />
      <path class="thin" d={`M${x(1 / 3)} ${y0} V${y1} M${x(1 / 2)} ${y0} V${y1}`} />
      <Label x={x(5 / 12)} y={y0 - 9}>
        usual
      </Label>
      <path class="axis" fill="none" d={`M${x0} ${y0} V${y1} H${x1}`} />
      {[0, 50, 100].map((value) => (
        <Label key={value} x={x0 - 6} y={y(value)} anchor="end">
          {percent(value)}
        </Label>
      ))}
      {marks.map(([value, text]) => (
        <Label key={text} x={x(value)} y={y1 + 12}>
          {text}
        </Label>
      ))}
      <Label x={(x0 + x1) / 2} y={y1 + 32}>
        depth of the groove, share of the wall
      </Label>
      <path class="curve" d={strength} />
      <path class="curve" stroke-dasharray="6 4" d={stiffness} />
      <line class="force" x1={at} y1={y1} x2={at} y2={y(left)} />
      <circle class="mark" cx={at} cy={y(left)} r="4" />
      <circle class="mark" cx={at} cy={y(stiff)} r="4" />
      {none ? (
        <Label x={x1} y={y(0) - 30} anchor="end">
          no wood left
        </Label>
      ) : (
        <>
          <Label {...words} y={y(left) - 26}>
            strength {percent(left)}
          </Label>
          <Label {...words} y={y(left) - 9}>
            stiffness {percent(stiff)}, dashed
          </Label>
        </>
      )}
      <NumberLabel x={x1} y={y0 - 9} anchor="end" value={v.web} kind="length" before="web " />
    </Drawing>
  );
}
