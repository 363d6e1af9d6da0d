/** Surfaces: a rim made flat, papers in a row, films on wood, a tongue under its films. */
import { Between, Num, Sketch, Word } from './sketch.tsx';

interface RimProps {
  title: string;
  /** Rock and loss at the high corners, mm; drawn so many times. */
  rock: number;
  loss: number;
  flat: boolean;
  times: number;
}

/** The rim from corner to corner, its four walls in a row. */
export function RimInARow({ title, rock, loss, flat, times }: RimProps) {
  const [top, foot] = [22, 92];
  const at = [8, 46, 84, 122, 160];
  const line = (depths: readonly number[]) =>
    depths.map((depth, i) => `${at[i]} ${top + depth * times}`).join('L');
  const twisted = [0, 0, 0, rock, 0];
  const after = [loss, 0, loss, rock, loss];
  return (
    <Sketch title={title} height={112}>
      <path class="wood" d={`M${line(flat ? after : twisted)}V${foot}H8Z`} />
      <path class="hidden-line" d={flat ? `M${line(twisted)}` : 'M84 22H160'} />
      {flat ? (
        <>
          <Between from={[84, top]} to={[84, top + loss * times]} />
          <Num of="c" value={loss} as="exact" x={84} y={10} />
        </>
      ) : (
        <>
          <Between from={[122, top]} to={[122, top + rock * times]} />
          <Num of="h" value={rock} as="exact" x={122} y={10} />
        </>
      )}
      {at.map((x, i) => (
        <Word key={x} of={String((i % 4) + 1)} x={x} y={foot + 10} />
      ))}
    </Sketch>
  );
}

/** Papers from coarse to fine as steps of a stair, each as high as its number is larger. */
export function Papers({ title, row }: { title: string; row: readonly number[] }) {
  const wide = 148 / row.length;
  const scale = 52 / Math.log(row.at(-1)! / row[0]!);
  let path = 'M10 92';
  const steps = row.map((grit, i) => ({ grit, x: 10 + i * wide, y: 80 - Math.log(grit / row[0]!) * scale }));
  for (const { x, y } of steps) path += `L${x} ${y}H${x + wide}`;
  return (
    <Sketch title={title} height={100}>
      <path class="wood" d={`${path}V92Z`} />
      {steps.map(({ grit, x, y }) => (
        <Word key={grit} of={String(grit)} x={x + wide / 2} y={y - 10} />
      ))}
    </Sketch>
  );
}

interface FilmProps {
  title: string;
  /** Coats and one coat, mm; a sheet of paper, mm. */
  coats: number;
  coat: number;
  paper: number;
  times: number;
}

/** Coats on wood, a sheet of paper lying beside them. */
export function CoatsAndPaper({ title, coats, coat, paper, times }: FilmProps) {
  const face = 78;
  const [film, sheet] = [coats * coat * times, paper * times];
  return (
    <Sketch title={title} height={108}>
      <rect class="wood" x="6" y={face} width="156" height="24" />
      <rect class="thing" x="14" y={face - film} width="68" height={film} />
      <path
        class="thin"
        d={Array.from({ length: coats - 1 }, (_, i) => `M14 ${face - (i + 1) * coat * times}h68`).join('')}
      />
      <rect class="inside" x="92" y={face - sheet} width="62" height={sheet} />
      <Num value={coats * coat} as="exact" x={48} y={face - film - 11} />
      <Word of="paper" x={123} y={face - sheet - 11} />
    </Sketch>
  );
}

interface TongueProps {
  title: string;
  /** Play without a film, and what is left of it, mm; drawn so many times. */
  play: number;
  left: number;
  times: number;
}

/** The upper and lower side of a tongue in its groove; a piece of its thickness is left out. */
export function TongueSides({ title, play, left, times }: TongueProps) {
  const [roof, floor] = [26, 112];
  const film = ((play - left) / 2) * times;
  const top = roof + left * times;
  return (
    <Sketch title={title} height={136}>
      <path class="end" d={`M6 10H92V${roof}H34V${floor}H92V128H6Z`} />
      {film > 0 && (
        <>
          <rect class="thing" x="38" y={top} width="122" height={film} />
          <rect class="thing" x="38" y={floor - film} width="122" height={film} />
        </>
      )}
      <rect class="wood" x="38" y={top + film} width="122" height={(floor - top) / 2 - film - 5} />
      <rect class="wood" x="38" y={(top + floor) / 2 + 5} width="122" height={(floor - top) / 2 - film - 5} />
      <Between from={[130, roof]} to={[130, top]} />
      <path class="thin" d={`M92 ${roof}H138`} />
      <Num of={film > 0 ? 'q' : 'p'} value={left} as="exact" x={134} y={roof - 12} />
    </Sketch>
  );
}
