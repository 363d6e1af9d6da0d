/** The floor of a slot, and lines on two parts that should meet. */
import { Num, Sketch, Word } from './sketch.tsx';

/** A slot from the face of the wall, large; the ridge in its floor in true proportion to its width. */
export function SlotFloor({ title, wide, ridge }: { title: string; wide: number; ridge: number }) {
  const scale = 72 / wide;
  const [left, right, floor] = [48, 120, 76] as const;
  return (
    <Sketch title={title} height={112}>
      <path
        class="wood"
        d={`M8 16H${left}V${floor}L${(left + right) / 2} ${floor - ridge * scale}L${right} ${floor}V16H160V108H8z`}
      />
      {ridge > 0 && <Num of="r" value={ridge} as="exact" x={(left + right) / 2} y={floor + 16} />}
    </Sketch>
  );
}

/** Two parts edge to edge, and the line on each; what they miss each other by is drawn larger. */
export function TwoLines({ title, apart, times }: { title: string; apart: number; times: number }) {
  const shift = apart * times;
  const x = 84 - shift / 2;
  return (
    <Sketch title={title} height={112}>
      <rect class="wood" x="8" y="8" width="152" height="38" />
      <rect class="wood" x="8" y="50" width="152" height="38" />
      <path class="curve" d={`M${x} 8v38M${x + shift} 50v38`} />
      <Word of="part" x={14} y={27} anchor="start" />
      <Word of="mate" x={14} y={69} anchor="start" />
      <Num value={apart} as="exact" x={84} y={101} />
    </Sketch>
  );
}
