/** The play of each finger along a corner, as bars, after the pin of the jig was set a little off: which pattern comes out? */
import type { Values } from '../../box/whole/index.ts';
import { fingerPlay } from '../../calc/joints/joint-fit.ts';
import { Drawing } from '../parts/Drawing.tsx';

/** How much too near the cutter the pin stands, as a share of the play. */
const offBy = 0.75;
/** Fingers that are shown. */
const shown = 7;

/** Play of a finger as the jig was set, and as it cuts with the pin too near, mm. */
export const playsOf = ({ slotWidth: k, cutterToPin, fingerFit }: Values) => ({
  set: fingerPlay.compute({ k, p: k + cutterToPin }),
  cut: fingerPlay.compute({ k, p: k + cutterToPin - offBy * fingerFit }),
});

/** The pattern that is true: what makes the play knows no number of the finger, so it is one for all. */
export const playPattern = (): string => ('i' in fingerPlay.inputs ? 'growing' : 'all');

const [width, height, left, foot] = [120, 112, 12, 98] as const;

export function PlayPick({ values: v, option }: { values: Values; option: string }) {
  const plays = playsOf(v);
  const set = 34;
  const change = set * (plays.cut / plays.set - 1);
  const each = (width - 2 * left) / shown;
  const bar = (i: number) =>
    set +
    (option === 'all'
      ? change
      : option === 'growing'
        ? (change * i * 2) / shown
        : i === shown - 1
          ? change
          : 0);
  return (
    <Drawing
      view={[0, 0, width, height]}
      title="The play of each finger, from the first to the last"
      description={
        option === 'all'
          ? 'All bars are longer, and alike.'
          : option === 'growing'
            ? 'Each bar is longer than the one before.'
            : 'Only the last bar is longer.'
      }
    >
      {Array.from({ length: shown }, (_, i) => (
        <rect
          key={i}
          class="wood"
          x={left + i * each + 2}
          y={foot - bar(i)}
          width={each - 4}
          height={bar(i)}
        />
      ))}
      <path class="axis" d={`M${left} ${foot}H${width - left}`} />
      <path class="hidden-line" d={`M${left - 6} ${foot - set}H${width - left + 6}`} />
    </Drawing>
  );
}
