/** Walls: the section with its groove, a side that gives. */
import { Between, Num, Push, Sketch, Sym } from './sketch.tsx';

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
