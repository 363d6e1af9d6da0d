/** Panels: an edge in its groove, and what is glued across the grain. In true proportion, enlarged. */
import { Between, Num, Push, Sketch, Sym, sheetWidth, Word } from './sketch.tsx';

/** px a mm. */
const scale = 12;
const [stub, lip, slot, panel] = [2, 2, 4.4, 3.6].map((mm) => mm * scale) as [number, number, number, number];

interface EdgeProps {
  title: string;
  /** Depth of the groove, and play between its bottom and the panel, mm. */
  depth: number;
  play: number;
  /** Symbol of the play. */
  of?: string;
  /** What is still held is measured too. */
  held?: boolean;
  /** A coat on the faces of the tongue, as a share of what it is drawn with, mm. */
  film?: number;
}

/** One edge of a panel, pushed to the far side, so that all its play shows here. */
export function EdgeInGroove({ title, depth, play, of = 'p', held = false, film = 0 }: EdgeProps) {
  const bottom = stub + 6;
  const mouth = bottom + depth * scale;
  const edge = bottom + Math.max(0, play) * scale;
  const top = 18 + lip;
  const height = 2 * lip + slot;
  const tongue = top + (slot - panel) / 2;
  const isIn = edge < mouth;
  return (
    <Sketch title={title} height={height + 44}>
      <path class="end" d={`M6 18H${mouth}V${top}H${bottom}V${top + slot}H${mouth}V${18 + height}H6Z`} />
      <path class="wood" d={`M${edge} ${tongue}H${sheetWidth - 4}v${panel}H${edge}Z`} />
      {film > 0 && (
        <path
          class="coat"
          stroke-width={film * scale}
          d={`M${sheetWidth - 4} ${tongue - (film * scale) / 2}H${edge - (film * scale) / 2}v${panel + film * scale}H${sheetWidth - 4}`}
        />
      )}
      <path class="thin" d={`M${bottom} ${top}v-${lip + 12}M${edge} ${tongue}V6`} />
      <Sym of="W" x={(edge + sheetWidth) / 2} y={10} />
      <Push from={[edge + 4, 10]} to={[edge + 22, 10]} />
      <Num of={of} value={play} as="exact" x={bottom + 2} y={height + 30} anchor="start" />
      <path class="thin" d={`M${(bottom + edge) / 2} ${top + slot / 2}V${height + 22}`} />
      {held && isIn && (
        <>
          <Between from={[edge, tongue + panel / 2]} to={[mouth, tongue + panel / 2]} />
          <Word of="held" x={(edge + mouth) / 2} y={tongue + panel / 2 - 10} />
        </>
      )}
    </Sketch>
  );
}

interface AcrossProps {
  title: string;
  /** Size of the panel across its grain, and what is glued to it there, mm. */
  width: number;
  glued: number;
  /** How far they come to differ, mm. */
  differ: number;
}

/** A lid from above with a strip glued across it; the grain runs level. What the lid wants to grow is drawn ten times. */
export function GluedAcross({ title, width, glued, differ }: AcrossProps) {
  const px = 88 / width;
  const [long, high] = [glued * px, width * px];
  const grow = (differ * 10 * px) / 2;
  const top = 14 + (high - long) / 2;
  return (
    <Sketch title={title} height={high + 34}>
      <rect class="wood" x="6" y="14" width="120" height={high} />
      <path
        class="ring"
        d={[0.15, 0.35, 0.55, 0.8].map((share) => `M10 ${14 + high * share}h112`).join('')}
      />
      <rect class="end" x="84" y={top} width="16" height={long} />
      <rect class="grown" x="84" y={top - grow} width="16" height={grow} />
      <rect class="grown" x="84" y={top + long} width="16" height={grow} />
      <Between from={[110, top]} to={[110, top + long]} />
      <Sym of="D" x={118} y={top + long / 2} />
      <Num of="Δ" value={differ} as="exact" x={sheetWidth / 2} y={high + 26} />
    </Sketch>
  );
}

interface StripProps {
  title: string;
  /** Width across the grain, and how far it grows, mm. */
  width: number;
  growth: number;
  /** How far its rings stand to its face, degrees: 0 flat, 90 upright. */
  rings?: number;
  times?: number;
  of?: string;
}

/** The end of a strip before and after: its growth is drawn larger than it is, and the caption says by how much. */
export function GrowingStrip({ title, width, growth, rings = 0, times = 15, of = 'ΔD' }: StripProps) {
  const px = 112 / Math.max(100, width);
  const [long, high, y] = [width * px, 34, 30];
  const more = growth * times * px;
  const lean = (rings * Math.PI) / 180;
  const [dx, dy] = [Math.cos(lean) * 200, -Math.sin(lean) * 200];
  const id = `strip-${title.replace(/\W+/g, '-')}`;
  return (
    <Sketch title={title} height={96}>
      <clipPath id={id}>
        <rect x="6" y={y} width={long} height={high} />
      </clipPath>
      <rect class="wood-end" x="6" y={y} width={long} height={high} />
      <path
        class="ring"
        clip-path={`url(#${id})`}
        d={Array.from({ length: 40 }, (_, i) => (i - 20) * 9)
          .map((at) =>
            rings < 45
              ? `M${6 + long / 2 - dx} ${y + high / 2 + at - dy}l${2 * dx} ${2 * dy}`
              : `M${6 + long / 2 + at - dx} ${y + high / 2 - dy}l${2 * dx} ${2 * dy}`,
          )
          .join('')}
      />
      <rect class="grown" x={6 + long} y={y} width={more} height={high} />
      <Between from={[6, 20]} to={[6 + long, 20]} />
      <Num of="D" value={width} x={6 + long / 2} y={8} />
      <Num of={of} value={growth} as="exact" x={6 + long + more} y={y + high + 16} anchor="end" />
    </Sketch>
  );
}
