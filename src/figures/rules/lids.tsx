/** Lids: a sliding one from above between its grooves, its notch, its grain, and the line between lid and box. */
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

/** A lid from above between its sides, and how far it grows toward them, drawn so many times. */
export function GrainOfLid({
  title,
  along = false,
  grows,
  width,
  times,
}: {
  title: string;
  along?: boolean;
  grows: number;
  width: number;
  times: number;
}) {
  const scale = 86 / width;
  const [left, top, wide, long] = [34, 8, 86, 96];
  const grown = grows * times * scale;
  const lines = [0.15, 0.3, 0.45, 0.6, 0.75, 0.9];
  return (
    <Sketch title={title} height={152}>
      <rect class="end" x={left - 10} y={top} width="10" height={long - 20} />
      <rect class="end" x={left + wide + 12} y={top} width="10" height={long - 20} />
      <rect class="wood" x={left} y={top} width={wide} height={long} />
      <rect class="grown" x={left + wide} y={top} width={Math.max(1, grown)} height={long} />
      <path
        class="ring"
        d={lines
          .map((share) =>
            along
              ? `M${left + share * wide} ${top + 3}V${top + long - 3}`
              : `M${left + 3} ${top + share * long}H${left + wide - 3}`,
          )
          .join('')}
      />
      <Push from={[left + wide / 2, top + long + 8]} to={[left + wide / 2, top + long + 36]} />
    </Sketch>
  );
}

/** A shut box from the front, and the line between lid and box. */
export function LidLine({ title, lid, height }: { title: string; lid: number; height: number }) {
  const scale = 84 / height;
  const [left, top, wide] = [12, 12, 112];
  const line = top + lid * scale;
  return (
    <Sketch title={title} height={112}>
      <rect class="wood" x={left} y={top} width={wide} height={84} />
      <path class="axis" d={`M${left} ${line}H${left + wide}`} />
      <Between from={[left + wide + 12, top]} to={[left + wide + 12, line]} />
      <Sym of="h" x={left + wide + 24} y={(top + line) / 2} />
    </Sketch>
  );
}

/** The end of a lid with its notch, cut along; both to one scale. */
export function NotchCut({ title, thick, depth }: { title: string; thick: number; depth: number }) {
  const scale = 5;
  const [left, top] = [4, 20];
  const [steep, slope, foot] = [70, 140, top + thick * scale];
  return (
    <Sketch title={title} height={84}>
      <path
        class="wood"
        d={`M${left} ${top}H${steep}V${top + depth * scale}L${slope} ${top}H164V${foot}H${left}z`}
      />
      <Between from={[steep - 10, top]} to={[steep - 10, top + depth * scale]} />
      <Sym of="n" x={steep - 10} y={top - 10} />
    </Sketch>
  );
}
