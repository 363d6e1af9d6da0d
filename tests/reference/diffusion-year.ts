/**
 * The year a piece settles into: moisture day by day once the same year of air has come round often enough.
 *
 * Runs `diffusion.ts` year after year until the profile on New Year's Day repeats. A thin bare panel does so at
 * once; a thick one under wax needs several years.
 */
import { moistureCourse } from '../../src/calc/air/diffusion.ts';
import type { DiffusionRange } from '../../src/calc/air/diffusion-coefficient.ts';
import { type Course, refuseSlab, type Slab, type Steps } from '../../src/calc/air/slab.ts';
import { DAYS_IN_YEAR } from '../../src/calc/air/year.ts';
import { isRefused, type Refused } from '../../src/calc/core/refusal.ts';

/** Settled when no cell is further from last New Year than this, % MC. */
const SETTLED = 0.005;
const MOST_YEARS = 60;

/** The same curve, looked up twice a day with straight lines between: the sorption equation is the slow part. */
function tabulated(moisture: (day: number) => number): (day: number) => number {
  const perDay = 2;
  const count = DAYS_IN_YEAR * perDay;
  const values = Float64Array.from({ length: count + 1 }, (_, i) => moisture((i % count) / perDay));
  return (day) => {
    const at = (((day % DAYS_IN_YEAR) + DAYS_IN_YEAR) % DAYS_IN_YEAR) * perDay;
    const i = Math.floor(at);
    return values[i]! + (at - i) * (values[i + 1]! - values[i]!);
  };
}

/**
 * Moisture of the piece through a settled year, days 0 to 365 (the last equals the first).
 * Each face's `moisture` must repeat every 365 days.
 * @returns a refusal for a slab without meaning, with both faces sealed, or so tight that it never settles.
 */
export function settledYear(slab: Slab, steps: Steps = {}): Course | Refused {
  const bad = refuseSlab(slab);
  if (bad) return bad;
  if (slab.front.surface + slab.back.surface === 0) {
    return { refused: 'With both faces sealed the piece never learns what the air is like.' };
  }
  const front = { ...slab.front, moisture: tabulated(slab.front.moisture) };
  const sameAir = slab.back.moisture === slab.front.moisture;
  const back = { ...slab.back, moisture: sameAir ? front.moisture : tabulated(slab.back.moisture) };
  const mean = (face: typeof front) => {
    let sum = 0;
    for (let day = 0; day < DAYS_IN_YEAR; day++) sum += face.moisture(day);
    return sum / DAYS_IN_YEAR;
  };
  // Each face counts by how easily it lets moisture through; a face with no resistance still has the wood's own.
  const ease = (face: typeof front) => 1 / (1 / face.surface + slab.thickness / 2 / slab.diffusion);
  const weight = ease(front) / (ease(front) + ease(back));
  let start: number | Float64Array = weight * mean(front) + (1 - weight) * mean(back);
  for (let year = 0; year < MOST_YEARS; year++) {
    const course: Course | Refused = moistureCourse({ ...slab, front, back }, start, DAYS_IN_YEAR, 0, steps);
    if (isRefused(course)) return course;
    const before = start;
    const off = course.profile.reduce(
      (most, now, i) => Math.max(most, Math.abs(now - (typeof before === 'number' ? before : before[i]!))),
      0,
    );
    if (off < SETTLED) return course;
    start = course.profile;
  }
  return { refused: `This piece takes more than ${MOST_YEARS} years to settle into the air of its place.` };
}

/** The settled year for each end and the middle of what is known of D: the slow one lags most and swings least. */
export interface SettledSpread {
  readonly low: Course;
  readonly middle: Course;
  readonly high: Course;
}

/** The same year three times, over the range of the diffusion coefficient. Show all three: the truth lies between. */
export function settledSpread(
  slab: Omit<Slab, 'diffusion'>,
  { low, middle, high }: DiffusionRange,
  steps: Steps = {},
): SettledSpread | Refused {
  const [slow, between, fast] = [low, middle, high].map((diffusion) =>
    settledYear({ ...slab, diffusion }, steps),
  );
  if (isRefused(slow)) return slow;
  if (isRefused(between)) return between;
  if (isRefused(fast)) return fast;
  return { low: slow!, middle: between!, high: fast! };
}
