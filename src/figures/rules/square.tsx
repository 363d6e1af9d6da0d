/** Boxes that are not square or not flat, each error drawn so many times. */
import { Between, Num, Sketch, Sym } from './sketch.tsx';

interface LeaningProps {
  title: string;
  /** Inside, mm; how far the far end stands aside, drawn so many times. */
  a: number;
  b: number;
  shift: number;
  times: number;
}

/** A box from above, racked, with both diagonals; dashed where it should stand. */
export function Racked({ title, a, b, shift, times }: LeaningProps) {
  const scale = 118 / a;
  const [w, h, s] = [a * scale, b * scale, shift * times * scale];
  const [x, y] = [18, 12];
  const corners = `${x + s} ${y}L${x + w + s} ${y}L${x + w} ${y + h}L${x} ${y + h}`;
  return (
    <Sketch title={title} height={h + 28}>
      <path class="wood" d={`M${corners}Z`} />
      {s > 0 && <path class="hidden-line" d={`M${x} ${y}h${w}v${h}h${-w}z`} />}
      <path class="curve" d={`M${x + s} ${y}L${x + w} ${y + h}M${x + w + s} ${y}L${x} ${y + h}`} />
      <Sym of="a" x={x + w / 2} y={y + h + 9} />
      <Sym of="b" x={x - 8} y={y + h / 2} />
    </Sketch>
  );
}

interface UnequalProps {
  title: string;
  /** How far two opposite walls differ, mm; drawn so many times. */
  apart: number;
  times: number;
}

/** A box from above whose long walls are of unequal length. */
export function UnequalWalls({ title, apart, times }: UnequalProps) {
  const more = apart * times;
  return (
    <Sketch title={title} height={112}>
      <path
        class="wood"
        fill-rule="evenodd"
        d={`M20 12H${130 + more}L130 84H20ZM30 22H${120 + more * 0.86}L120 74H30Z`}
      />
      {more > 0 && <path class="hidden-line" d="M130 12V88" />}
      {apart > 0 && <Num of="d" value={apart} as="exact" x={84} y={100} />}
    </Sketch>
  );
}

interface TwistProps {
  title: string;
  /** Rock, and width between the feet, mm; drawn so many times. */
  rock: number;
  width: number;
  times: number;
}

/** A box on a flat plate, from its end: the far end stands behind it, turned by the twist. */
export function OnPlate({ title, rock, width, times }: TwistProps) {
  const scale = 118 / width;
  const [w, h, up] = [118, 46, rock * times * scale];
  const [x, foot] = [22, 84];
  const angle = Math.atan2(up, w);
  const [dx, dy] = [h * Math.sin(angle), h * Math.cos(angle)];
  return (
    <Sketch title={title} height={116}>
      <rect class="wood" x={x} y={foot - h} width={w} height={h} />
      {up > 0 && (
        <path
          class="hidden-line"
          d={`M${x} ${foot}L${x + w * Math.cos(angle)} ${foot - up}l${-dx} ${-dy}L${x - dx} ${foot - dy}Z`}
        />
      )}
      <path class="axis" d={`M6 ${foot}H162`} />
      {up > 0 && (
        <>
          <Between from={[x + w + 8, foot - up]} to={[x + w + 8, foot]} />
          <Sym of="h" x={x + w + 18} y={foot - up / 2} />
        </>
      )}
      <Between from={[x, foot + 10]} to={[x + w, foot + 10]} />
      <Sym of="b" x={x + w / 2} y={foot + 22} />
    </Sketch>
  );
}

interface StripProps {
  title: string;
  /** Widths at the end that was cut first and at the other, mm; their difference is drawn so many times. */
  first: number;
  other: number;
  times: number;
}

/** The strip of the fifth cut, lying along the panel it was cut from. */
export function FiveCutStrip({ title, first, other, times }: StripProps) {
  const [left, right, top] = [22, 146, 16];
  const wide = 26;
  const more = (first - other) * times;
  return (
    <Sketch title={title} height={108}>
      <path class="wood" d={`M${left} ${top}H${right}V${top + wide}L${left} ${top + wide + more}Z`} />
      <path class="wood-end" d={`M${left} ${top + wide + more + 8}L${right} ${top + wide + 8}V92H${left}Z`} />
      {more > 0 && <path class="hidden-line" d={`M${left} ${top + wide}H${right}`} />}
      <Sym of="A" x={left - 10} y={top + (wide + more) / 2} />
      <Sym of="B" x={right + 10} y={top + wide / 2} />
    </Sketch>
  );
}
