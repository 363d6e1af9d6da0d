/** Tails, pins and keys, in true proportion: rows of tails from the face of their wall, keys from above and from outside. */
import { Between, Num, Sketch, Sym, Word } from './sketch.tsx';

interface RowProps {
  title: string;
  /** Height of the wall, number of tails, narrow side of a pin, thickness of the wall, slope; mm. */
  high: number;
  tails: number;
  pin: number;
  wall: number;
  slope: number;
  /** Whether the row begins and ends with half a pin, or with a tail. */
  halfPins: boolean;
}

/** The wall with the tails from its face; between them the ends of the pins. */
export function TailRow({ title, high, tails, pin, wall, slope, halfPins }: RowProps) {
  const scale = 96 / high;
  const [root, foot] = [80, 104] as const;
  const deep = wall * scale;
  const up = (mm: number) => foot - mm * scale;
  const taper = wall / slope;
  // As wide a tail, shifted by half a pin, where the row begins with one.
  const pitch = halfPins ? high / tails : (high + pin) / tails;
  const first = halfPins ? pin / 2 : 0;
  const ends = Array.from(
    { length: tails },
    (_, i) => [first + i * pitch, first + (i + 1) * pitch - pin] as const,
  );
  const atEdge = (mm: number) => mm < 1e-6 || mm > high - 1e-6;
  return (
    <Sketch title={title} height={112}>
      <rect class="wood" x={root} y={up(high)} width="80" height={high * scale} />
      <rect class="end" x={root - deep} y={up(high)} width={deep} height={high * scale} />
      {ends.map(([low, top]) => {
        const [a, b] = [atEdge(low) ? low : low + taper, atEdge(top) ? top : top - taper];
        return (
          <path
            key={low}
            class="wood"
            d={`M${root} ${up(a)}L${root - deep} ${up(low)}V${up(top)}L${root} ${up(b)}`}
          />
        );
      })}
      <Between from={[root - deep - 10, up(ends[1]![0])]} to={[root - deep - 10, up(ends[1]![1])]} />
      <Word of="tail" x={root - deep - 16} y={up((ends[1]![0] + ends[1]![1]) / 2)} anchor="end" />
      <path class="thin" d={`M${root - deep - 4} ${up(ends[0]![1] + pin / 2)}h-20`} />
      <Sym of="p" x={root - deep - 32} y={up(ends[0]![1] + pin / 2)} />
    </Sketch>
  );
}

interface TailProps {
  title: string;
  /** Thickness of the wall, mm, slope, and what the tail spreads on either side, mm. */
  wall: number;
  slope: number;
  spread: number;
}

/** One tail, large, beside the straight cheek it might have had. */
export function OneTail({ title, wall, slope, spread }: TailProps) {
  const scale = 62 / wall;
  const [left, right, top, foot] = [64, 112, 26, 88] as const;
  const aside = spread * scale;
  return (
    <Sketch title={title} height={116}>
      <path
        class="wood"
        d={`M${left} ${foot}L${left - aside} ${top}H${right + aside}L${right} ${foot}H150V108H26V${foot}Z`}
      />
      <path class="hidden-line" d={`M${left} ${foot}V${top - 6}M${right} ${foot}V${top - 6}`} />
      <Num of="e" value={spread} as="exact" x={right - 2} y={10} />
      <Sym of={`1 in ${slope}`} x={88} y={60} />
    </Sketch>
  );
}

interface KeyProps {
  title: string;
  /** Thickness of the walls, depth of the slot along the diagonal, what it leaves; mm. */
  wall: number;
  depth: number;
  left: number;
}

/** A mitered corner from above, its outer edge at the upper left, with a key in its slot. */
export function KeyFromAbove({ title, wall, depth, left }: KeyProps) {
  const scale = 50 / wall;
  const t = wall * scale;
  const leg = depth * scale * Math.SQRT2;
  const [x, y] = [30, 10] as const;
  return (
    <Sketch title={title} height={112}>
      <path class="wood" d={`M${x} ${y}H162v${t}H${x + t}V108h${-t}z`} />
      <path class="end" d={`M${x} ${y}h${leg}L${x} ${y + leg}z`} />
      <Between from={[x, y]} to={[x + leg / 2, y + leg / 2]} />
      <Sym of="d" x={x + leg / 2 - 22} y={y + leg / 2 - 4} />
      <path class="curve" d={`M${x + leg / 2} ${y + leg / 2}L${x + t} ${y + t}`} />
      <Num of="w" value={left} x={x + t + 8} y={y + t + 16} anchor="start" />
    </Sketch>
  );
}

interface KeysProps {
  title: string;
  /** Height of the corner, number of keys, their thickness, how far one reaches along a wall; mm. */
  high: number;
  keys: number;
  thick: number;
  leg: number;
}

/** One face of a keyed corner from outside, the corner's edge at the left. */
export function KeysInCorner({ title, high, keys, thick, leg }: KeysProps) {
  const scale = 96 / high;
  const [x, foot] = [46, 104] as const;
  const each = (high / keys) * scale;
  return (
    <Sketch title={title} height={112}>
      <rect class="wood" x={x} y={foot - high * scale} width="114" height={high * scale} />
      {Array.from({ length: keys }, (_, i) => (
        <rect
          key={i}
          class="end"
          x={x}
          y={foot - (i + 0.5) * each - (thick * scale) / 2}
          width={leg * scale}
          height={thick * scale}
        />
      ))}
      <Between from={[x - 12, foot - each]} to={[x - 12, foot]} />
      <Sym of="h" x={x - 24} y={foot - each / 2} />
    </Sketch>
  );
}
