/** Ends of boards with their rings, cut from a log in true proportion. */
import { Num, Sketch, Word } from './sketch.tsx';

interface CupProps {
  title: string;
  /** mm: width of the board, distance of its face from the pith, depth of the hollow, drawn so many times. */
  width: number;
  pith: number;
  cup: number;
  times: number;
  thickness?: number;
}

/** A flat-sawn board, bark side up, after it has dried. */
export function CuppedBoard({ title, width, pith, cup, times, thickness = 15 }: CupProps) {
  const scale = 140 / width;
  const [w, t, R, deep] = [width, thickness, pith, cup * times].map((mm) => mm * scale) as [
    number,
    number,
    number,
    number,
  ];
  const [left, middle, y] = [14, 84, 34];
  const id = `cup-${title.replace(/\W+/g, '-')}`;
  const outline = `M${left} ${y}Q${middle} ${y + 2 * deep} ${left + w} ${y}v${t}Q${middle} ${y + t + 2 * deep} ${left} ${y + t}Z`;
  return (
    <Sketch title={title} height={96}>
      <clipPath id={id}>
        <path d={outline} />
      </clipPath>
      <path class="wood-end" d={outline} />
      <path
        class="ring"
        clip-path={`url(#${id})`}
        d={Array.from({ length: 14 }, (_, i) => R - 20 + i * 7)
          .filter((r) => r > 4)
          .map((r) => `M${middle - r} ${y + R}a${r} ${r} 0 0 1 ${2 * r} 0`)
          .join('')}
      />
      <path class="thin" d={`M${left} ${y}h${w}`} />
      <Word of="bark side" x={middle} y={y - 20} />
      <Num of="c" value={cup} as="exact" x={middle} y={y + t + deep + 18} />
    </Sketch>
  );
}

interface BowProps {
  title: string;
  width: number;
  thickness: number;
  cup: number;
  times: number;
}

/** A lid cut through, its upper face drier than the lower: hollow where it is dry. */
export function BowedLid({ title, width, thickness, cup, times }: BowProps) {
  const scale = 140 / width;
  const [w, t, deep] = [width * scale, thickness * scale, cup * times * scale];
  const y = 36;
  return (
    <Sketch title={title} height={96}>
      <path
        class="wood-end"
        d={`M14 ${y}Q84 ${y + 2 * deep} ${14 + w} ${y}v${t}Q84 ${y + t + 2 * deep} 14 ${y + t}Z`}
      />
      <path class="thin" d={`M14 ${y}h${w}`} />
      {cup > 0 && <Word of="drier" x={84} y={y - 20} />}
      <path class="thin" d={`M20 ${y + t + 14}V${y + t + 1}`} marker-end="url(#arrow)" />
      <Num of="T" value={thickness} x={14} y={y + t + 24} anchor="start" />
      <Num of="c" value={cup} as="exact" x={150} y={y + t + 24} anchor="end" />
    </Sketch>
  );
}

/** The end of a log: whole, or dried with the wedge that is missing, degrees. */
export function Disk({ title, wedge }: { title: string; wedge: number }) {
  const [x, y, r] = [84, 56, 48];
  const half = (wedge / 2) * (Math.PI / 180);
  const at = (angle: number, radius: number) =>
    `${(x + radius * Math.sin(angle)).toFixed(2)} ${(y - radius * Math.cos(angle)).toFixed(2)}`;
  const arc = (radius: number) =>
    wedge > 0
      ? `M${at(half, radius)}A${radius} ${radius} 0 1 1 ${at(-half, radius)}`
      : `M${x - radius} ${y}a${radius} ${radius} 0 1 1 ${2 * radius} 0a${radius} ${radius} 0 1 1 ${-2 * radius} 0`;
  return (
    <Sketch title={title} height={118}>
      <path class="wood-end" d={wedge > 0 ? `${arc(r)}L${x} ${y}Z` : arc(r)} />
      <path class="ring" d={[10, 18, 26, 34, 42].map(arc).join('')} />
      <circle class="mark" cx={x} cy={y} r="3" />
      {wedge > 0 && <Num value={wedge} kind="angle" x={x + 24} y={8} anchor="start" />}
      <Word of="pith" x={x + 8} y={y + 12} anchor="start" />
    </Sketch>
  );
}

/** The end of a board with rings at an angle to its wide face, degrees. */
export function RingAngle({ title, angle, of = 'θ' }: { title: string; angle: number; of?: string }) {
  const [x, y, w, t] = [14, 24, 140, 44];
  const id = `angle-${title.replace(/\W+/g, '-')}`;
  const lean = (angle * Math.PI) / 180;
  const [dx, dy] = [Math.cos(lean) * 300, Math.sin(lean) * 300];
  const across = [-Math.sin(lean), -Math.cos(lean)] as const;
  return (
    <Sketch title={title} height={96}>
      <clipPath id={id}>
        <rect x={x} y={y} width={w} height={t} />
      </clipPath>
      <rect class="wood-end" x={x} y={y} width={w} height={t} />
      <path
        class="ring"
        clip-path={`url(#${id})`}
        d={Array.from({ length: 41 }, (_, i) => (i - 20) * 8)
          .map((off) => {
            const [mx, my] = [x + w / 2 + across[0] * off, y + t / 2 + across[1] * off];
            return `M${(mx - dx).toFixed(1)} ${(my + dy).toFixed(1)}L${(mx + dx).toFixed(1)} ${(my - dy).toFixed(1)}`;
          })
          .join('')}
      />
      <Num of={of} value={angle} kind="angle" x={84} y={y + t + 16} />
    </Sketch>
  );
}
