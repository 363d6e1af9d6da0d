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

/** A box cut through, shut, with the room inside; mm³. */
export const ShutBox = ({ title, inside }: { title: string; inside: number }) => (
  <Sketch title={title} height={104}>
    <path class="end" d="M14 14h10v64h-10zM144 14h10v64h-10z" />
    <path class="wood" d="M20 20H148V27H20ZM20 66H148V73H20Z" />
    <rect class="inside" x="24" y="27" width="120" height="39" />
    <Num of="V" value={inside} kind="volume" x={84} y={47} />
  </Sketch>
);
