/** Corners with fingers, seen from the face of one wall, in true proportion. */
import { Between, Num, Sketch, Sym, Word } from './sketch.tsx';

interface CornerProps {
  title: string;
  /** Height of the wall and width of a finger, mm. */
  high: number;
  finger: number;
  /** Below this height the front is cut off, mm from the table. */
  front?: number;
  /** A groove in the wall: from the table, and so wide; mm. */
  groove?: readonly [from: number, wide: number];
  /** What stands below, in a word or two, or a measured number. */
  of?: string;
}

/** Lower edge at the foot; the fingers of this wall are faces, those of the other show their ends. */
export function FingerCorner({ title, high, finger, front, groove, of = 'f' }: CornerProps) {
  const scale = 96 / high;
  const [x, wide, foot] = [62, 26, 104];
  const count = Math.ceil(high / finger - 1e-6);
  const up = (mm: number) => foot - mm * scale;
  const part = (i: number) => {
    const [from, to] = [i * finger, Math.min(high, (i + 1) * finger)];
    return { y: up(to), height: (to - from) * scale };
  };
  const whole = Math.floor(high / finger + 1e-6);
  const left = high - whole * finger;
  const hole = front === undefined ? undefined : Math.floor(front / finger + 1e-6);
  return (
    <Sketch title={title} height={118}>
      <rect class="wood" x={x + wide} y={up(front ?? high)} width="74" height={(front ?? high) * scale} />
      {Array.from({ length: count }, (_, i) => i).map((i) =>
        i % 2 === 0 ? (
          <rect key={i} class="end" x={x} width={wide} {...part(i)} />
        ) : front !== undefined && (i + 1) * finger > front + 1e-6 ? (
          <g key={i}>
            {i * finger < front && (
              <rect class="wood" x={x} width={wide} y={up(front)} height={(front - i * finger) * scale} />
            )}
            {i === hole && (
              <rect
                class="hole"
                x={x}
                width={wide}
                y={up((i + 1) * finger)}
                height={((i + 1) * finger - front) * scale}
              />
            )}
          </g>
        ) : (
          <rect key={i} class="wood" x={x} width={wide} {...part(i)} />
        ),
      )}
      {groove && (
        <path class="hidden-line" d={`M${x} ${up(groove[0])}h100M${x} ${up(groove[0] + groove[1])}h100`} />
      )}
      {groove && (
        <rect class="hole" x={x} width={wide} y={up(groove[0] + groove[1])} height={groove[1] * scale} />
      )}
      <Between from={[x - 8, up(finger)]} to={[x - 8, foot]} />
      <Sym of={of} x={x - 20} y={foot - (finger * scale) / 2} />
      <Between from={[18, up(high)]} to={[18, foot]} />
      <Sym of="H" x={28} y={foot - 60} />
      {left > 1e-6 && front === undefined && (
        <Num value={left} x={x + wide + 8} y={up(high) + 16} anchor="start" />
      )}
    </Sketch>
  );
}

interface SlideProps {
  title: string;
  /** Errors at the far edge, growing from the fence, mm: one for each finger. */
  errors: readonly number[];
  times: number;
  /** At which ends the fence stood. */
  from: string;
}

/** How far each finger stands beside its slot; drawn larger. What binds is marked. */
export function AddedErrors({ title, errors, times, from }: SlideProps) {
  const step = 96 / errors.length;
  const most = Math.max(...errors);
  return (
    <Sketch title={title} height={118}>
      {errors.map((error, i) => (
        <g key={i}>
          <rect class={i % 2 ? 'wood' : 'end'} x="30" y={6 + i * step} width="26" height={step} />
          <rect class="mark" x="60" y={6 + (i + 0.2) * step} width={error * times} height={step * 0.6} />
        </g>
      ))}
      {most > 0 && (
        <Num
          value={most}
          as="exact"
          x={66 + most * times}
          y={6 + (errors.indexOf(most) + 0.5) * step}
          anchor="start"
        />
      )}
      <Word of={from} x={30} y={111} anchor="start" />
    </Sketch>
  );
}

interface FitProps {
  title: string;
  /** Play between slot and finger, mm; below zero it binds. */
  play: number;
  times: number;
  of: string;
}

/** A finger in its slot, from the end; its play is drawn larger. */
export function FingerInSlot({ title, play, times, of }: FitProps) {
  const slot = 60;
  const finger = slot - play * times;
  const y = 16 + (slot - finger) / 2;
  return (
    <Sketch title={title} height={110}>
      <path class="wood" d={`M10 4H158V16H58V76H158V88H10Z`} />
      <rect class={play < 0 ? 'wood jammed' : 'end'} x="58" y={y} width="84" height={finger} />
      <Num of={of} value={Math.abs(play)} as="exact" x={84} y={97} />
    </Sketch>
  );
}
