/** A sliding lid from above, between its two grooves. */
import { Between, Push, Sketch, Sym } from './sketch.tsx';

interface Props {
  title: string;
  /** mm: width of the lid, what is still held, and how far off the middle it is pulled. */
  width: number;
  held: number;
  off: number;
  jams: boolean;
}

export function LidPulledOff({ title, width, held, off, jams }: Props) {
  const scale = 86 / width;
  const [w, l, e] = [width, held, off].map((mm) => mm * scale) as [number, number, number];
  const [left, top, mouth] = [40, 8, 62];
  const turn = jams ? 4 : 0;
  const out = 34;
  return (
    <Sketch title={title} height={152}>
      <rect class="end" x={left - 10} y={top} width="10" height={mouth - top + 14} />
      <rect class="end" x={left + w} y={top} width="10" height={mouth - top + 14} />
      <g transform={`rotate(${turn} ${left + w / 2} ${mouth})`}>
        <rect
          class={jams ? 'wood jammed' : 'wood'}
          x={left + 1}
          y={mouth + 14 - l}
          width={w - 2}
          height={l + out}
        />
      </g>
      <Between from={[left - 18, mouth + 14 - l]} to={[left - 18, mouth + 14]} />
      <Sym of="L" x={left - 28} y={mouth + 14 - l / 2} />
      <path class="thin" d={`M${left + w / 2} ${mouth + 10}V${mouth + 64}`} stroke-dasharray="4 3" />
      <Push from={[left + w / 2 + e, mouth + out + 8]} to={[left + w / 2 + e, mouth + out + 34]} />
      {e > 4 && (
        <>
          <Between from={[left + w / 2, mouth + out + 40]} to={[left + w / 2 + e, mouth + out + 40]} />
          <Sym of="e" x={left + w / 2 + e + 10} y={mouth + out + 36} />
        </>
      )}
    </Sketch>
  );
}
