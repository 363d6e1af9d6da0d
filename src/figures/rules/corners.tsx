/** Where two walls meet: corners from above, an end out of square, a step at the rim. */
import { Between, Num, Sketch, Sym, sheetWidth, Word } from './sketch.tsx';

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
