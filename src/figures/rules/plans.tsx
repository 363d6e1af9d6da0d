/** The box from above or from the front, in true proportion. */
import { Between, Num, Sketch, Sym, Word } from './sketch.tsx';

interface PlanProps {
  title: string;
  /** Outside length and width, and the wall; mm. */
  length: number;
  width: number;
  wall: number;
  /** mm of the outside that would fill the sheet; for states drawn to one scale. */
  fill?: number;
  /** What lies in it: length and width, mm. */
  contents?: readonly [number, number];
  /** Lining, mm, and dividers with their thickness, mm. */
  lining?: number;
  dividers?: readonly [count: number, thickness: number];
  outside?: string;
  inside?: string;
  /** Words in the middle. */
  word?: string;
}

export function Plan(p: PlanProps) {
  const scale = 144 / (p.fill ?? p.length);
  const [L, W, t] = [p.length, p.width, p.wall].map((mm) => mm * scale) as [number, number, number];
  const [x, y] = [84 - L / 2, 8];
  const lining = (p.lining ?? 0) * scale;
  const [count, thick] = p.dividers ?? [0, 0];
  const [inL, inW] = [L - 2 * t - 2 * lining, W - 2 * t - 2 * lining];
  const d = thick * scale;
  const cell = (inL - count * d) / (count + 1);
  return (
    <Sketch title={p.title} height={W + 46}>
      <rect class="wood" x={x} y={y} width={L} height={W} />
      {lining > 0 && <rect class="wood-end" x={x + t} y={y + t} width={L - 2 * t} height={W - 2 * t} />}
      <rect class="inside" x={x + t + lining} y={y + t + lining} width={inL} height={inW} />
      {Array.from({ length: count }, (_, i) => (
        <rect
          key={i}
          class="wood"
          x={x + t + lining + (i + 1) * cell + i * d}
          y={y + t + lining}
          width={d}
          height={inW}
        />
      ))}
      {p.contents && (
        <rect
          class="thing"
          x={84 - (p.contents[0] * scale) / 2}
          y={y + W / 2 - (p.contents[1] * scale) / 2}
          width={p.contents[0] * scale}
          height={p.contents[1] * scale}
        />
      )}
      {p.inside && (
        <>
          <Between from={[x + t + lining, y + W / 2]} to={[x + L - t - lining, y + W / 2]} />
          <Word of={p.inside} x={84} y={y + W / 2 + 12} />
        </>
      )}
      {p.word && <Word of={p.word} x={84} y={y + W / 2} />}
      <Between from={[x, y + W + 10]} to={[x + L, y + W + 10]} />
      <Num of={p.outside ?? 'L'} value={p.length} x={84} y={y + W + 26} />
    </Sketch>
  );
}

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

/** A front, high and wide; mm. */
export function Front({
  title,
  high,
  wide,
  word,
}: {
  title: string;
  high: number;
  wide: number;
  word: string;
}) {
  const scale = 132 / wide;
  const h = high * scale;
  return (
    <Sketch title={title} height={104}>
      <rect class="wood" x="26" y={78 - h} width="132" height={h} />
      <Between from={[16, 78 - h]} to={[16, 78]} />
      <Sym of="H" x={8} y={78 - h / 2} />
      <Between from={[26, 86]} to={[158, 86]} />
      <Sym of="W" x={150} y={96} />
      <Word of={word} x={92} y={78 - h / 2} />
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

/** A box cut through, shut, with the room inside; mm³. */
export const ShutBox = ({ title, inside }: { title: string; inside: number }) => (
  <Sketch title={title} height={104}>
    <path class="end" d="M14 14h10v64h-10zM144 14h10v64h-10z" />
    <path class="wood" d="M20 20H148V27H20ZM20 66H148V73H20Z" />
    <rect class="inside" x="24" y="27" width="120" height="39" />
    <Num of="V" value={inside} kind="volume" x={84} y={47} />
  </Sketch>
);
