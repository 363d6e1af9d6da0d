/**
 * Errors of nine steps along one board, in sizes of one error: where every step shares it, and where each falls either
 * way. How far chance takes the last slot is guessed.
 */
import { addedStepError } from '../../calc/joints/joint-fit.ts';
import { randomStepErrorOfOne } from '../../calc/joints/one-board.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label } from '../parts/Label.tsx';

/** Steps of one board of nineteen fingers. */
export const stepsOfOne = 9;
/** What can be marked: sizes of one error. */
export const chanceRange = { low: 0, high: stepsOfOne } as const;

const [left, right, zero, unit] = [40, 286, 198, 17] as const;
export const chanceFrame: GuessFrame = {
  width: 350,
  height: 316,
  from: [right + 16, zero],
  to: [right + 16, zero - stepsOfOne * unit],
};
const across = (step: number) => left + ((right - left) * step) / stepsOfOne;
const up = (times: number) => placeIn(chanceFrame, chanceRange, times)[1];

/** Sizes of one error that chance comes to after so many steps, and a common error. */
export const byChance = (n: number) => randomStepErrorOfOne.compute({ n, sigma: 1 });
const inCommon = (i: number) => addedStepError.compute({ i, delta: 1 });

/** Ten boards whose steps are off by chance, one error in size as a rule: the same boards every time. */
const boards = Array.from({ length: 10 }, (_, board) => {
  let seed = board * 0x9e3779b9 + 40;
  let place = 0;
  return Array.from({ length: stepsOfOne }, () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let mixed = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    // Evenly spread from −√3 to √3: that spread has the size 1.
    place += (((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32 - 0.5) * Math.sqrt(12);
    return place;
  });
});
const points = (of: (step: number) => number) =>
  Array.from({ length: stepsOfOne + 1 }, (_, i) => `${across(i).toFixed(1)} ${up(of(i)).toFixed(1)}`);
const line = (of: (step: number) => number) => points(of).join('L');
/** The lower edge of what chance comes to, from the last step to the first. */
const back = points((step) => -byChance(step))
  .toReversed()
  .join('L');

interface Props {
  mark: number | undefined;
  open: boolean;
}

export function ChanceGuess({ mark, open }: Props) {
  const most = byChance(stepsOfOne);
  return (
    <Drawing
      view={[0, 0, chanceFrame.width, chanceFrame.height]}
      title="How far the last slot of a board is out of place"
      description={`Nine steps. Where every step is off alike, the last slot is off by nine times one error. ${
        open
          ? `Where each falls either way, by about ${most} times.`
          : 'What chance makes of it is not drawn yet.'
      }`}
    >
      {open && (
        <g class="arrives">
          <path class="usual" d={`M${line(byChance)}L${back}Z`} />
          {boards.map((board, i) => (
            <path
              key={i}
              class="thin"
              fill="none"
              d={`M${across(0)} ${zero}L${board.map((place, step) => `${across(step + 1).toFixed(1)} ${up(place).toFixed(1)}`).join('L')}`}
            />
          ))}
          <Label x={right} y={zero + 5 * unit + 24} anchor="end">
            {`by chance: about ${most} times, either way`}
          </Label>
        </g>
      )}
      <path
        class="axis"
        d={`M${left} ${zero}H${right}M${left} ${up(stepsOfOne)}V${zero + 5 * unit}`}
        fill="none"
      />
      <path class="drift" fill="none" d={`M${line(inCommon)}`} />
      <Label x={left + 10} y={up(stepsOfOne) + 4} anchor="start">
        all off alike: nine times
      </Label>
      <Label x={left - 8} y={zero} anchor="end">
        0
      </Label>
      <Label x={left + 10} y={zero + 5 * unit - 6} anchor="start">
        after nine steps
      </Label>
      {!open && <circle class="mark" cx={across(1)} cy={up(1)} r={4} />}
      {mark !== undefined && <path class="ghost bare" d={`M${left} ${up(mark)}H${right + 16}`} />}
    </Drawing>
  );
}
