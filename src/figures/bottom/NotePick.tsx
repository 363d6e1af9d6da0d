/** A bottom that is tapped, with its swing; and three swings, one of which is that of a bottom twice as thick. */
import type { Values } from '../../box/whole/index.ts';
import { tapMotion, tapPitch } from '../../calc/bottom/bottom.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { fadingSwing } from './TapRing.tsx';

/** Pitch that each option draws, times that of the thin bottom. */
const drawn: Readonly<Record<string, number>> = { deeper: 0.5, same: 1, higher: 2 };
/** Swings of the thin bottom in the width of an option. */
const swings = 4;

const asTwiceAsThick = (v: Values) => ({ h: v.bottomThickness, h_0: v.bottomThickness / 2 });
/** Pitch of the bottom, times that of one half as thick. */
export const doubledPitch = (v: Values): number => tapPitch.compute(asTwiceAsThick(v));
/** Motion under the same tap, % of that of one half as thick. */
export const doubledMotion = (v: Values): number => tapMotion.compute(asTwiceAsThick(v));

/** Which of the drawn swings it makes. */
export function noteOption(v: Values): string {
  const pitch = doubledPitch(v);
  return pitch > 1.05 ? 'higher' : pitch < 0.95 ? 'deeper' : 'same';
}

export function TwoBottoms({ values: v }: { values: Values }) {
  const [left, long, scale] = [12, 326, 326 / v.insideLength] as const;
  const [thin, thick] = [v.bottomThickness / 2, v.bottomThickness];
  return (
    <Drawing
      view={[0, 0, 350, 158]}
      title="Two bottoms, cut through"
      description={`One is ${said(thin, 'length')} thick, the other ${said(thick, 'length')}. How the thin one swings after a tap is drawn.`}
    >
      <NumberLabel x={left} y={14} anchor="start" value={thin} kind="length" after=" thick, tapped:" />
      <rect class="wood" x={left} y={26} width={long} height={thin * scale} />
      <path class="axis" d={`M${left} 72h${long}`} />
      <g transform={`translate(${left} 0)`}>
        <path class="curve" d={fadingSwing(72, 1, 26, long, (swings * long) / 130)} />
      </g>
      <NumberLabel
        x={left}
        y={118}
        anchor="start"
        value={thick}
        kind="length"
        after=" thick, the same tap: ?"
      />
      <rect class="wood" x={left} y={130} width={long} height={thick * scale} />
    </Drawing>
  );
}

export function NotePick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const right = open && option === noteOption(v);
  const pitch = right ? doubledPitch(v) : drawn[option]!;
  const high = 26 * (right ? doubledMotion(v) / 100 : 1);
  return (
    <Drawing
      view={[0, 0, 150, 74]}
      title="A swing after a tap"
      description={
        right
          ? `It swings ${said(pitch, 'number', { digits: 0 })} times as fast, and ${said(high / 0.26, 'percent', { digits: 0 })} as far.`
          : { deeper: 'It swings slower.', same: 'It swings as fast.', higher: 'It swings faster.' }[option]!
      }
    >
      <path class="axis" d="M10 37h130" />
      <g transform="translate(10 0)">
        <path class="curve" d={fadingSwing(37, pitch, high, 130, swings)} />
      </g>
    </Drawing>
  );
}
