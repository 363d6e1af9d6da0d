/** Walls: the section with its groove, a side that gives, corners from above, an end out of square. */
import { Between, Num, Push, Sketch, Sym, sheetWidth, Word } from './sketch.tsx';

interface GrooveProps {
  title: string;
  /** Thickness of the wall, depth and width of the groove, wood beside it; mm. */
  wall: number;
  depth: number;
  slot: number;
  lip: number;
  /** Symbols of depth, lip and web. */
  of: { depth?: string; lip?: string; web?: string; wall?: string };
  /** The push on the lip, as an arrow. */
  push?: string;
  /** Whether the lip splits off. */
  splits?: boolean;
}

/** A wall cut through at its upper edge; the groove opens to the right, where the inside is. */
export function GrooveInWall({ title, wall, depth, slot, lip, of, push, splits = false }: GrooveProps) {
  const scale = 72 / wall;
  const [t, g, w, m] = [wall, depth, slot, lip].map((mm) => mm * scale) as [number, number, number, number];
  const [x, top, foot] = [34, 22, 112];
  const right = x + t;
  return (
    <Sketch title={title} height={136}>
      <path
        class="end"
        d={`M${x} ${top}H${right}V${top + m}H${right - g}V${top + m + w}H${right}V${foot}H${x}Z`}
      />
      {splits && <path class="split" d={`M${right - g} ${top + m}l4 ${-m / 2}l-6 ${-m / 4}l3 ${-m / 4}`} />}
      {push && (
        <>
          <Push from={[right - 6, top + m + w + 18]} to={[right - 6, top + m + 2]} />
          <Sym of={push} x={right + 12} y={top + m + w} />
        </>
      )}
      {of.lip && (
        <>
          <Between from={[x - 10, top]} to={[x - 10, top + m]} />
          <path class="thin" d={`M${x - 14} ${top + m}H${right - g}`} />
          <Sym of={of.lip} x={x - 22} y={top + m / 2} />
        </>
      )}
      {of.depth && (
        <>
          <Between from={[right - g, 12]} to={[right, 12]} />
          <path class="thin" d={`M${right - g} 8V${top + m}M${right} 8V${top}`} />
          <Sym of={of.depth} x={right + 12} y={12} />
        </>
      )}
      {of.web && (
        <>
          <Between from={[x, top + m + w / 2]} to={[right - g, top + m + w / 2]} />
          <Sym of={of.web} x={x + (t - g) / 2} y={top + m + w / 2 - 11} />
        </>
      )}
      {of.wall && (
        <>
          <Between from={[x, foot + 8]} to={[right, foot + 8]} />
          <Sym of={of.wall} x={x + t / 2} y={foot + 16} />
        </>
      )}
    </Sketch>
  );
}

interface BeamProps {
  title: string;
  /** mm: its length and thickness, and how far it gives, drawn so many times. */
  length: number;
  thickness: number;
  gives: number;
  times: number;
  /** Symbols of load and thickness. */
  load: string;
  thick: string;
  of?: string;
}

/** A side from above, or a bottom from its edge, between its supports and bent by a load in the middle. */
export function Bent({ title, length, thickness, gives, times, load, thick, of = '' }: BeamProps) {
  const scale = 140 / length;
  const [t, sag] = [thickness * scale, gives * times * scale];
  const [left, right, y] = [14, 154, 34];
  const middle = (left + right) / 2;
  const line = (at: number, back: boolean) => {
    const [a, b] = back ? [right, left] : [left, right];
    // A beam's bending line as two cubics, which it is exactly.
    const third = (b - a) / 6;
    return `c${third} ${sag / 2} ${2 * third} ${sag} ${3 * third} ${sag}s${2 * third} ${-sag / 2} ${3 * third} ${-sag}${back ? `V${at}` : ''}`;
  };
  return (
    <Sketch title={title} height={104}>
      <path class="hidden-line" d={`M${left} ${y}H${right}`} />
      <path class="wood" d={`M${left} ${y}${line(y, false)}v${t}${line(y, true)}Z`} />
      <path class="thin" d={`M${left} ${y + t}l-6 10h12zM${right} ${y + t}l-6 10h12z`} />
      <Push from={[middle, 4]} to={[middle, y + sag - 3]} />
      <Sym of={load} x={middle + 14} y={10} />
      <path class="thin" d={`M${left + 22} ${y - 14}V${y + 2}`} marker-end="url(#arrow)" />
      <Num of={thick} value={thickness} x={left + 22} y={y - 22} />
      <Num of={of} value={gives} as="exact" x={middle} y={94} />
    </Sketch>
  );
}

interface CornerProps {
  title: string;
  /** By how much the end stands over the other wall, as a share of its thickness; mm. */
  proud: number;
  wall: number;
  times?: number;
  of: string;
}

/** A corner from above: the end of a finger in the face of the other wall. */
export function ProudCorner({ title, proud, wall, times = 4, of }: CornerProps) {
  const scale = 52 / wall;
  const [t, e] = [wall * scale, proud * scale * times];
  const [x, y] = [46, 22];
  return (
    <Sketch title={title} height={112}>
      <path class="wood" d={`M${x} ${y + t}h${t}v${108 - y - t}h${-t}z`} />
      <rect class="end" x={x - e} y={y} width={t + e} height={t} />
      <rect class="wood" x={x + t} y={y} width={sheetWidth - 6 - x - t} height={t} />
      {proud > 0 && <path class="thin" d={`M${x} ${y}V8M${x - e} ${y}V8`} />}
      {proud > 0 && <Num of={of} value={proud} as="exact" x={x + 6} y={10} anchor="start" />}
      <Between from={[x, y + t + 16]} to={[x + t, y + t + 16]} />
      <Sym of="t" x={x + t / 2} y={y + t + 27} />
    </Sketch>
  );
}

interface MiterProps {
  title: string;
  wall: number;
  gap: number;
  angle: number;
  times: number;
}

/** The last corner of a mitered frame from above; the gap is drawn larger. */
export function OpenMiter({ title, wall, gap, angle, times }: MiterProps) {
  const t = 54;
  const open = (gap * times * t) / wall;
  const [x, y] = [40, 18];
  return (
    <Sketch title={title} height={116}>
      <path class="wood" d={`M${x} ${y}l${t} ${t}V112h${-t}z`} />
      <path class="wood" d={`M${x + open * 0.2} ${y - 4}H${sheetWidth - 6}v${t}H${x + t + open}z`} />
      <Num of="e" value={angle} kind="angle" digits={2} x={164} y={y + t + 16} anchor="end" />
      <Num of="gap" value={gap} as="exact" x={164} y={y + t + 34} anchor="end" />
    </Sketch>
  );
}

interface EndProps {
  title: string;
  /** Height of the wall, how far its end is off over it, mm; the error of the angle, degrees. */
  high: number;
  off: number;
  angle: number;
  times: number;
}

/** The end of a wall seen from its face; dashed where it should be. */
export function EndOutOfSquare({ title, high, off, angle, times }: EndProps) {
  const scale = 72 / high;
  const step = off * times * scale;
  const [x, y] = [110, 14];
  return (
    <Sketch title={title} height={112}>
      <path class="wood" d={`M6 ${y}H${x}L${x + step} ${y + 72}H6Z`} />
      <path class="hidden-line" d={`M${x} ${y}v78`} />
      <Between from={[20, y]} to={[20, y + 72]} />
      <Sym of="w" x={30} y={y + 36} />
      <Num of="e" value={angle} kind="angle" digits={2} x={x - 6} y={y + 36} anchor="end" />
      <Num of="x" value={off} as="exact" x={x} y={y + 88} />
    </Sketch>
  );
}

interface StepProps {
  title: string;
  /** Heights at the corner of two walls, mm, and how much larger their difference is drawn. */
  heights: readonly [number, number];
  times: number;
  words: readonly [string, string];
  /** Where grooves lie below the upper edges, mm. */
  groove?: number;
}

/** Two walls that meet, seen from outside: does the rim, or the groove, run level? */
export function RimStep({ title, heights: [a, b], times, words, groove }: StepProps) {
  const least = Math.min(a, b);
  const up = (height: number) => 56 + (height - least) * times;
  const [left, middle, right, foot] = [8, 84, 160, 92];
  const slot = (from: number, to: number, height: number) =>
    groove === undefined ? null : (
      <rect class="hole" x={from} y={foot - up(height) + groove} width={to - from} height="8" />
    );
  return (
    <Sketch title={title} height={114}>
      <rect class="wood" x={left} y={foot - up(a)} width={middle - left} height={up(a)} />
      <rect class="wood" x={middle} y={foot - up(b)} width={right - middle} height={up(b)} />
      {slot(left, middle, a)}
      {slot(middle, right, b)}
      {a !== b && <Num value={Math.abs(a - b)} as="exact" x={middle} y={10} />}
      <Word of={words[0]} x={(left + middle) / 2} y={104} />
      <Word of={words[1]} x={(middle + right) / 2} y={104} />
    </Sketch>
  );
}
