/** Lids that come off: the saw cut that frees one, the room around a liner, the back edges at a hinge. */
import { Between, Sketch, Sym, Word } from './sketch.tsx';

/** One wall cut across at the line: the saw cut from outside, and the web left inside. */
export function SawnOff({
  title,
  wall,
  web,
  kerf,
}: {
  title: string;
  wall: number;
  web: number;
  kerf: number;
}) {
  const scale = 9;
  const [left, line] = [48, 52];
  const [thick, cut, high] = [wall, wall - web, kerf].map((mm) => mm * scale) as [number, number, number];
  return (
    <Sketch title={title} height={128}>
      <path
        class="end"
        d={`M${left} 8H${left + thick}V120H${left}V${line + high}H${left + cut}V${line}H${left}z`}
      />
      <Between from={[left - 12, line]} to={[left - 12, line + high]} />
      <Sym of="k" x={left - 24} y={line + high / 2} />
    </Sketch>
  );
}

/** Liner and lid with the films between them; both films drawn alike. */
export function LinerRoom({ title, room, film }: { title: string; room: number; film: number }) {
  const scale = 180;
  const [left, top, high] = [52, 10, 84];
  const [gap, coat] = [room * scale, (film / 2) * scale];
  return (
    <Sketch title={title} height={104}>
      <rect class="wood-end" x="2" y={top} width={left - 2} height={high} />
      <rect class="wood" x={left + gap} y={top} width={166 - left - gap} height={high} />
      <rect class="water" x={left} y={top} width={coat} height={high} />
      <rect class="water" x={left + gap - coat} y={top} width={coat} height={high} />
      <Word of="liner" x={27} y={top + high / 2} />
      <Word of="lid" x={(left + gap + 166) / 2} y={top + high / 2} />
    </Sketch>
  );
}

/** The back edges of box and lid at the knuckle, shut as far as they go. */
export function HingeEdges({ title, tooDeep, knuckle }: { title: string; tooDeep: number; knuckle: number }) {
  const scale = 9;
  const [px, py, r] = [132, 62, (knuckle / 2) * scale];
  const half = (tooDeep / 2) * scale;
  const turn = tooDeep > 0 ? (2 * Math.atan(tooDeep / knuckle) * 180) / Math.PI : 0;
  return (
    <Sketch title={title} height={124}>
      <rect class="wood-end" x="2" y={py - half} width={px - r - 2} height={124 - py + half} />
      <g transform={turn ? `rotate(${turn.toFixed(2)} ${px} ${py})` : undefined}>
        <rect class="wood" x="2" y={py + half - 44} width={px - r - 2} height="44" />
      </g>
      <circle class="ready" cx={px} cy={py} r={r} />
      <circle class="mark" cx={px} cy={py} r="2.5" />
    </Sketch>
  );
}
