/** A lid after the air has changed: finished on one face or both, on an open box or a shut one, and how it bows meanwhile. */
import type { InputsOf } from '../../../box/core/field.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { diffusionOf } from '../../../box/subjects/air/wait.ts';
import type { MovementValues } from '../../../box/subjects/movement/results.ts';
import { moistureCourse } from '../../../calc/air/diffusion.ts';
import { SHUT_INSIDE } from '../../../calc/air/slab.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { outsideRange } from '../../../calc/core/working.ts';
import { finishes, ROOM_SURFACE, surfaceUnderFinish } from '../../../calc/finish/finish.ts';
import { cupFromFaces } from '../../../calc/movement/cup-faces.ts';
import { CupCourse } from '../../../figures/finish/CupCourse.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { lab } from '../../lesson/lab-spec.ts';
import { once } from '../../lesson/once.ts';
import { oneFinish } from './choice.ts';

/** Days a figure may show. */
const horizons = [14, 30, 60, 120, 240, 480] as const;
/** Points of moisture that count as no change of air. */
const SAME = 0.2;

/** Outer face minus inner face, in points by quarter or whole days, for the three ways a lid may be. */
function differences(thickness: number, diffusion: number, resistance: number, from: number, to: number) {
  const finished = surfaceUnderFinish.compute({ S_air: ROOM_SURFACE, r: resistance });
  // A shut lid is a slab of twice the thickness; a third of the way into its second half the cup has gone.
  const slow = (0.4 * thickness ** 2) / diffusion + (2 * thickness) / finished;
  const days = horizons.find((horizon) => horizon > slow) ?? 480;
  const every = days > 60 ? 1 : 0.25;
  const air = (surface: number) => ({ surface: surface * every, moisture: () => to });
  const course = (front: number, back: number | undefined) =>
    moistureCourse(
      {
        thickness,
        diffusion: diffusion * every,
        front: air(front),
        back: back === undefined ? SHUT_INSIDE : air(back),
      },
      from,
      days / every,
      0,
      { cells: 24, perDay: 1 },
    );
  const ways = [
    { word: 'open, finished outside only', course: course(finished, ROOM_SURFACE) },
    { word: 'shut, bare', course: course(ROOM_SURFACE, undefined) },
    { word: 'shut, finished outside', course: course(finished, undefined) },
  ];
  const bad = ways.map((way) => way.course).find(isRefused);
  if (bad) return bad;
  return {
    every,
    ways: ways.map((way) => ({ word: way.word, points: isRefused(way.course) ? [] : way.course.difference })),
  };
}

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
      : differences(v.lidThickness, D.middle, resistance(v), v.moistureToday, v.moistureDamp);
  },
);
const worst = (depth: ArrayLike<number>) => Math.max(...Array.from(depth, Math.abs));
const panel = (v: V, dM: number) => ({ C: v.movementUp, dM, w: v.lidWidth, T: v.lidThickness });

/** How each lid bows, day by day, or why nothing can be said. */
function bowsOf(v: V) {
  const found = course(v);
  if (isRefused(found)) return found;
  if (Number.isNaN(v.movementUp))
    return { refused: 'No movement figure is known for this wood in this air.' };
  if (v.moistureDamp - v.moistureToday < SAME)
    return { refused: 'Today is already the dampest day of this air: nothing is to come.' };
  const most = Math.max(...found.ways.map(({ points }) => worst(points)));
  if (outsideRange(cupFromFaces, panel(v, most)))
    return { refused: 'This lid would bow too far for the formula, which takes the bow as shallow.' };
  const cup = (dM: number) => cupFromFaces.compute(panel(v, dM));
  return {
    every: found.every,
    courses: found.ways.map(({ word, points }) => ({
      word,
      depth: Float64Array.from(points, cup),
      worst: Math.abs(cup(worst(points))),
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
