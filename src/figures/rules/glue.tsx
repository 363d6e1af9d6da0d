/** Joints with glue: films, how far its water gets, what is pressed out, and the line it leaves. */
import { Num, Push, Sketch, sheetWidth, Word } from './sketch.tsx';

const middle = sheetWidth / 2;

interface FilmProps {
  title: string;
  /** Film at the upper and at the lower end of the joint, mm, and how many times larger it is drawn. */
  film: readonly [upper: number, lower: number];
  times: number;
  /** What presses from both sides, in words; without it nothing but tape. */
  pressed?: string;
}

/** Two faces and the glue between them. */
export function FilmBetween({ title, film: [upper, lower], times, pressed }: FilmProps) {
  const [a, b] = [(upper * times) / 2, (lower * times) / 2];
  const [top, foot, thick] = [26, 96, 34] as const;
  return (
    <Sketch title={title} height={124}>
      <path
        class="wood"
        d={`M${middle - a} ${top}L${middle - b} ${foot}H${middle - b - thick}L${middle - a - thick} ${top}Z`}
      />
      <path
        class="wood"
        d={`M${middle + a} ${top}L${middle + b} ${foot}H${middle + b + thick}L${middle + a + thick} ${top}Z`}
      />
      <path class="thing" d={`M${middle - a} ${top}H${middle + a}L${middle + b} ${foot}H${middle - b}Z`} />
      {pressed && (
        <>
          <Push from={[10, 40]} to={[middle - a - thick - 6, 40]} />
          <Push from={[sheetWidth - 10, 40]} to={[middle + a + thick + 6, 40]} />
          <Word of={pressed} x={middle} y={10} />
        </>
      )}
      <Num value={lower} as="exact" digits={2} x={middle} y={112} />
    </Sketch>
  );
}

/** A glue line in a wall, and how far its water has got to both sides; user units to a mm. */
export function WaterReach({ title, reach }: { title: string; reach: number }) {
  const scale = 18;
  const x = reach * scale;
  return (
    <Sketch title={title} height={104}>
      <rect class="wood" x="14" y="18" width={sheetWidth - 28} height="52" />
      <rect class="water" x={middle - x} y="18" width={2 * x} height="52" />
      <path class="curve" d={`M${middle} 18V70`} />
      <path class="thin" d={`M${middle} 70V92M${middle + x} 70V92`} />
      <Num value={reach} as="exact" digits={2} x={middle + x + 6} y={88} anchor="start" />
    </Sketch>
  );
}

/** Height of the corner whose glue is pressed out, mm: that of the rule's example. */
const cornerHeight = 56;

/** The inside of a corner from above, near by, with the half of its squeeze-out that lands there; mm³. */
export function SqueezedOut({ title, volume }: { title: string; volume: number }) {
  const scale = 26;
  /** A quarter of a round bar along the corner. */
  const r = Math.sqrt((4 * (volume / 2)) / (cornerHeight * Math.PI)) * scale;
  const [x, y] = [60, 46];
  return (
    <Sketch title={title} height={112}>
      <path class="wood" d={`M14 6H${x}V106H14Z`} />
      <path class="wood" d={`M${x} 6H154V${y}H${x}Z`} />
      <path class="curve" d={`M${x} 6V${y}`} />
      <path class="thing" d={`M${x} ${y}h${r}a${r} ${r} 0 0 1 ${-r} ${r}z`} />
      <Word of="inside" x={x + 56} y={y + 40} />
    </Sketch>
  );
}

interface LineProps {
  title: string;
  /** How far the face stands up at the line, mm; below zero it is sunken. */
  stands: number;
  /** Spread of the water to each side, mm. */
  reach: number;
  /** How many times higher heights are drawn. */
  times: number;
}

/** The face of a wall across a glue line: swollen and planed off, or sunken. */
export function FaceAcrossLine({ title, stands, reach, times }: LineProps) {
  const [across, top] = [9, 44] as const;
  const points = Array.from({ length: 41 }, (_, i) => i * 0.36 - 7.2)
    .map((x) => {
      const y = top - stands * times * across * Math.exp((-x * x) / (2 * reach ** 2));
      return `${(middle + x * across).toFixed(1)} ${y.toFixed(2)}`;
    })
    .join('L');
  const [left, right] = [middle - 7.2 * across, middle + 7.2 * across];
  return (
    <Sketch title={title} height={100}>
      {stands > 0 ? (
        <>
          <path class="wood" d={`M${left} 92V${top}H${right}V92`} />
          <path class="grown" d={`M${points}Z`} />
        </>
      ) : (
        <path class="wood" d={`M${left} 92L${points}L${right} 92`} />
      )}
      <path class="curve" d={`M${middle} ${stands > 0 ? top : top - stands * times * across}V92`} />
      <Num value={Math.abs(stands)} as="exact" digits={2} x={middle} y={stands > 0 ? 14 : 28} />
    </Sketch>
  );
}
