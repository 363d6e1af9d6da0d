/** One long side from above, pushed in the middle: the two bending lines between which a real side lies. */
import type { Values } from '../../box/whole/index.ts';
import { bendsAsBeam } from '../../calc/walls/side-push.ts';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { bendingLine, free, held } from './bending-line.ts';

/** Most the drawn deflection may take of the length; beyond it the next smaller magnification is used. */
const most = 0.36;
const magnifications = [100, 10, 1] as const;

export function SidePush({ values: v }: { values: Values }) {
  const { outsideLength: length, insideLength: span, wall } = v;
  const text = textSize(length * 1.12);
  const known = Number.isFinite(v.sidePushFree) && bendsAsBeam(span, wall);
  const times = magnifications.find((one) => v.sidePushFree * one <= most * span) ?? 1;
  const room = most * length + text;
  const sag = { free: v.sidePushFree * times, held: v.sidePushHeld * times };
  const arrow = text * 2.6;
  const legend = wall + room + text * 1.2;
  return (
    <Drawing
      view={[-length * 0.06, -arrow - text * 1.6, length * 1.12, arrow + legend + text * 5.4]}
      title="A long side from above, pushed in the middle"
      description={
        known
          ? `Pushed with ${said(v.push, 'force')}, it gives from ${said(v.sidePushHeld, 'length', { as: 'fine' })} to ${said(v.sidePushFree, 'length', { as: 'fine' })}; drawn ${times} times larger.`
          : 'No number for this side: too thick for its length, or a wood without a figure.'
      }
    >
      <rect class="wood" x="0" y={wall} width={wall} height={room} />
      <rect class="wood" x={length - wall} y={wall} width={wall} height={room} />
      <rect class="wood" x="0" y="0" width={length} height={wall} />
      <line
        class="force"
        x1={length / 2}
        y1={-arrow}
        x2={length / 2}
        y2={-text * 0.2}
        marker-end="url(#arrow)"
      />
      <NumberLabel x={length / 2} y={-arrow - text * 0.8} value={v.push} kind="force" before="push " />
      {known ? (
        <>
          <path
            class="usual"
            d={`${bendingLine(free, wall, wall, span, sag.free)}${bendingLine(held, wall, wall, span, sag.held).replace('M', 'L')}`}
            fill-rule="evenodd"
          />
          <path class="curve" d={bendingLine(free, wall, wall, span, sag.free)} />
          <path class="hidden-line" d={bendingLine(held, wall, wall, span, sag.held)} />
          <Line kind="curve" y={legend} text={text} before="ends free: " value={v.sidePushFree} />
          <Line
            kind="hidden-line"
            y={legend + text * 1.5}
            text={text}
            before="ends held: "
            value={v.sidePushHeld}
          />
          <Label x={0} y={legend + text * 3} anchor="start">
            shaded: a real side{times > 1 && `. Bend drawn ${times} times larger`}
          </Label>
        </>
      ) : (
        <Label x={length / 2} y={wall + room / 2}>
          no number: see below
        </Label>
      )}
    </Drawing>
  );
}

/** A line of the legend. */
function Line({
  kind,
  y,
  text,
  before,
  value,
}: {
  kind: string;
  y: number;
  text: number;
  before: string;
  value: number;
}) {
  return (
    <>
      <line class={kind} x1={0} y1={y} x2={text * 2.2} y2={y} />
      <NumberLabel
        x={text * 2.8}
        y={y}
        anchor="start"
        value={value}
        kind="length"
        as="fine"
        before={before}
      />
    </>
  );
}
