/** A lid after the air has changed: finished on one face or both, on an open box or a shut one, and how it bows meanwhile. */
import type { InputsOf } from '../../../box/core/field.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { diffusionOf } from '../../../box/subjects/air/wait.ts';
import { behindFilm, faceDifferences, farthest, type LidWay } from '../../../box/subjects/finish/lid-bows.ts';
import type { MovementValues } from '../../../box/subjects/movement/results.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { outsideRange } from '../../../calc/core/working.ts';
import { finishes, ROOM_SURFACE } from '../../../calc/finish/finish.ts';
import { cupFromFaces } from '../../../calc/movement/cup-faces.ts';
import { CupCourse } from '../../../figures/finish/CupCourse.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { lab } from '../../lesson/lab-spec.ts';
import { once } from '../../lesson/once.ts';
import { oneFinish } from './choice.ts';

/** Points of moisture that count as no change of air. */
const SAME = 0.2;

/** The three ways a lid may be. @param resistance of the finish, day/mm */
const waysOf = (resistance: number): readonly LidWay[] => [
  { word: 'open, finished outside only', outside: behindFilm(resistance), inside: ROOM_SURFACE },
  { word: 'shut, bare', outside: ROOM_SURFACE },
  { word: 'shut, finished outside', outside: behindFilm(resistance) },
];

const own = { finish: oneFinish('finish') };
type V = MovementValues & InputsOf<typeof own>;

/** From today's air to the dampest. */
const creep = (v: V) => diffusionOf(v, (v.moistureToday + v.moistureDamp) / 2);
const resistance = (v: V) => finishes[Number(v.finish)]!.resistance;
const course = once(
  (v: V) => [v.lidThickness, v.specificGravity, resistance(v), v.moistureToday, v.moistureDamp],
  (v: V) => {
    const D = creep(v);
    return isRefused(D)
      ? D
      : faceDifferences(
          waysOf(resistance(v)),
          { thickness: v.lidThickness, diffusion: D.middle },
          { from: v.moistureToday, to: v.moistureDamp },
        );
  },
);
const worst = (points: ArrayLike<number>) => Math.abs(farthest(points));
const panel = (v: V, dM: number) => ({ C: v.movementUp, dM, w: v.lidWidth, T: v.lidThickness });

/** How each lid bows, day by day, or why nothing can be said. */
function bowsOf(v: V) {
  const found = course(v);
  if (isRefused(found)) return found;
  if (Number.isNaN(v.movementUp))
    return { refused: 'No movement figure is known for this wood in this air.' };
  if (v.moistureDamp - v.moistureToday < SAME)
    return { refused: 'Today is already the dampest day of this air: nothing is to come.' };
  const most = Math.max(...found.points.map(worst));
  if (outsideRange(cupFromFaces, panel(v, most)))
    return { refused: 'This lid would bow too far for the formula, which takes the bow as shallow.' };
  const cup = (dM: number) => cupFromFaces.compute(panel(v, dM));
  return {
    every: found.every,
    courses: waysOf(resistance(v)).map(({ word }, i) => ({
      word,
      depth: Float64Array.from(found.points[i]!, cup),
      worst: Math.abs(cup(worst(found.points[i]!))),
    })),
  };
}

const row = rowsOf<V>();

export const facesLab = lab({
  title: 'One face or both',
  own,
  controls: ['lidThickness', 'finish', 'humidityDamp'],
  more: ['humidityToday', 'ringAngle', 'species'],
  solve: bowsOf,
  figure: ({ values: { every, courses } }) => <CupCourse every={every} courses={courses} />,
  says: ({ courses: [open, bare, shut] }) => (
    <>
      The air turns from today’s to the dampest. With the same finish on both faces of an open box the lid
      stays flat. Finished outside only it bows by <Quantity value={open!.worst} kind="length" as="fine" />{' '}
      before it comes back. On a shut box a bare lid bows the other way by{' '}
      <Quantity value={bare!.worst} kind="length" as="fine" />, one finished outside by{' '}
      <Quantity value={shut!.worst} kind="length" as="fine" />.
    </>
  ),
  results: [
    row(cupFromFaces, (v) => panel(v, 1), {
      label: 'cup for each point between the faces',
      kind: 'length',
      digits: 2,
      denominator: 64,
      rule: 'both-faces-or-cup-for-days',
    }),
  ],
});
