/** How far the faces of a lid part in moisture after its air has turned damp: on one side or both, behind films or bare. */
import { moistureCourse } from '../../../calc/air/diffusion.ts';
import { SHUT_INSIDE } from '../../../calc/air/slab.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import { ROOM_SURFACE, surfaceUnderFinish } from '../../../calc/finish/finish.ts';

/** One way a lid may be finished and stand. Surface coefficients in mm/day; without `inside` the box is shut. */
export interface LidWay {
  readonly word: string;
  readonly outside: number;
  readonly inside?: number;
}

/** Days a figure may show. */
const horizons = [14, 30, 60, 120, 240, 480] as const;

/** Surface coefficient of a face in the air of a room behind a film of so much resistance, mm/day. @param resistance day/mm */
export const behindFilm = (resistance: number): number =>
  surfaceUnderFinish.compute({ S_air: ROOM_SURFACE, r: resistance });

/**
 * Outer face minus inner face, in points, by quarter or whole days, for each way.
 * @param thickness mm. @param diffusion mm²/day. @param from, to moisture the air asks for before and after, % MC.
 * @returns days from one value to the next, and the differences; a refusal as `moistureCourse` gives it.
 */
export function faceDifferences(
  ways: readonly LidWay[],
  { thickness, diffusion }: { thickness: number; diffusion: number },
  { from, to }: { from: number; to: number },
): { readonly every: number; readonly points: readonly Float64Array[] } | Refused {
  const slowest = Math.min(...ways.map(({ outside }) => outside));
  // A shut lid is a slab of twice the thickness; a third of the way into its second half the cup has gone.
  const slow = (0.4 * thickness ** 2) / diffusion + (2 * thickness) / slowest;
  const days = horizons.find((horizon) => horizon > slow) ?? 480;
  const every = days > 60 ? 1 : 0.25;
  const air = (surface: number) => ({ surface: surface * every, moisture: () => to });
  const points: Float64Array[] = [];
  for (const { outside, inside } of ways) {
    const course = moistureCourse(
      {
        thickness,
        diffusion: diffusion * every,
        front: air(outside),
        back: inside === undefined ? SHUT_INSIDE : air(inside),
      },
      from,
      days / every,
      0,
      { cells: 24, perDay: 1 },
    );
    if (isRefused(course)) return course;
    points.push(course.difference);
  }
  return { every, points };
}

/** The value of a course that is farthest from zero, with its sign. */
export const farthest = (course: ArrayLike<number>): number =>
  Array.from(course).reduce((most, each) => (Math.abs(each) > Math.abs(most) ? each : most), 0);
