/**
 * Moisture soaking through a board: a slab, both faces, a finish on each, air that changes all the time.
 *
 *   ∂u/∂t = D ∂²u/∂x²,   flux into a face = S (M_air − u_face)
 *
 * Symbols: u moisture content (%), x depth (mm), t time (day), D diffusion coefficient (mm²/day),
 * S surface coefficient (mm/day), M_air the moisture the wood would settle at in the air at that face (%).
 * Held fixed: D (in truth it rises with moisture, and is known to a factor of about two), temperature, thickness.
 *
 * Finite volumes of equal width; time by TR-BDF2, a second-order implicit method that damps a sudden change
 * instead of ringing. With its parameter at 2 − √2 both of its stages solve the same tridiagonal matrix, so it
 * is factored once. Water is kept exactly: what the cells gain is what crossed the faces.
 */
import { firstRefusal, type Refused } from './refusal.ts';
import { type Course, refuseSlab, type Slab, type Steps } from './slab.ts';

const GAMMA = 2 - Math.SQRT2;
const HALF = GAMMA / 2;
const WEIGHT = Math.SQRT2 / 4;
/** Stage two leans on stage one and on the start: (1, −(1−γ)²)/(γ(2−γ)). */
const ON_STAGE = 1 / (GAMMA * (2 - GAMMA));
const ON_START = ((1 - GAMMA) * (1 - GAMMA)) / (GAMMA * (2 - GAMMA));

/**
 * Moisture through the thickness over a number of days.
 *
 * @param start % MC, the same all through or one value per cell.
 * @param days whole days to run; @param from day on which it starts, handed to each face's `moisture`.
 * @returns daily values, `days + 1` of them, or a refusal for a slab or a start without meaning.
 */
export function moistureCourse(
  slab: Slab,
  start: number | Float64Array,
  days: number,
  from = 0,
  { cells = 24, perDay = 2 }: Steps = {},
): Course | Refused {
  const first = typeof start === 'number' ? start : (start[0] ?? Number.NaN);
  const bad =
    refuseSlab(slab) ??
    firstRefusal(
      ['moisture at the start', first, 0, 30, ' %'],
      ['number of days', days, 0, 40_000, ''],
      ['number of cells', typeof start === 'number' ? cells : start.length, 4, 400, ''],
      ['number of steps a day', perDay, 1, 100, ''],
    );
  if (bad) return bad;
  const n = typeof start === 'number' ? cells : start.length;
  const u = typeof start === 'number' ? new Float64Array(n).fill(start) : Float64Array.from(start);

  const step = 1 / perDay;
  const width = slab.thickness / n;
  const between = slab.diffusion / width;
  const inFront = 1 / (1 / (2 * between) + 1 / slab.front.surface);
  const behind = 1 / (1 / (2 * between) + 1 / slab.back.surface);
  // Rows of I − (γ/2) h A, factored for the Thomas algorithm.
  const off = (HALF * step * between) / width;
  const edge = HALF * step;
  const pivot = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const left = i === 0 ? (edge * inFront) / width : off;
    const right = i === n - 1 ? (edge * behind) / width : off;
    pivot[i] = 1 / (1 + left + right - (i === 0 ? 0 : off * off * pivot[i - 1]!));
  }
  const solve = (rows: Float64Array, airFront: number, airBack: number) => {
    rows[0]! += (edge * inFront * airFront) / width;
    rows[n - 1]! += (edge * behind * airBack) / width;
    for (let i = 1; i < n; i++) rows[i]! += off * pivot[i - 1]! * rows[i - 1]!;
    rows[n - 1]! *= pivot[n - 1]!;
    for (let i = n - 2; i >= 0; i--) rows[i] = (rows[i]! + off * rows[i + 1]!) * pivot[i]!;
  };

  const daily = () => new Float64Array(days + 1);
  const course = { mean: daily(), front: daily(), back: daily(), difference: daily() };
  const gained = { front: 0, back: 0 };
  const stage = new Float64Array(n);
  let [airFront, airBack] = [slab.front.moisture(from), slab.back.moisture(from)];

  const note = (day: number) => {
    let [sum, moment, square] = [0, 0, 0];
    for (let i = 0; i < n; i++) {
      const height = 0.5 - (i + 0.5) / n;
      sum += u[i]!;
      moment += u[i]! * height;
      square += height * height;
    }
    course.mean[day] = sum / n;
    course.difference[day] = moment / square;
    course.front[day] = u[0]! + (inFront * (airFront - u[0]!)) / (2 * between);
    course.back[day] = u[n - 1]! + (behind * (airBack - u[n - 1]!)) / (2 * between);
  };
  const cross = (weight: number, v: Float64Array) => {
    gained.front += weight * step * inFront * (airFront - v[0]!);
    gained.back += weight * step * behind * (airBack - v[n - 1]!);
  };

  note(0);
  for (let k = 0; k < days * perDay; k++) {
    const time = from + k * step;
    for (let i = 0; i < n; i++) {
      const fromFront = i === 0 ? inFront * (airFront - u[0]!) : between * (u[i - 1]! - u[i]!);
      const fromBack = i === n - 1 ? behind * (airBack - u[i]!) : between * (u[i + 1]! - u[i]!);
      stage[i] = u[i]! + (edge * (fromFront + fromBack)) / width;
    }
    cross(WEIGHT, u);
    airFront = slab.front.moisture(time + GAMMA * step);
    airBack = slab.back.moisture(time + GAMMA * step);
    solve(stage, airFront, airBack);
    cross(WEIGHT, stage);
    for (let i = 0; i < n; i++) u[i] = ON_STAGE * stage[i]! - ON_START * u[i]!;
    airFront = slab.front.moisture(time + step);
    airBack = slab.back.moisture(time + step);
    solve(u, airFront, airBack);
    cross(HALF, u);
    if ((k + 1) % perDay === 0) note((k + 1) / perDay);
  }
  // Every cell hears of every other within a step, so one look finds air that was no number on any day.
  if (!Number.isFinite(u[0]!)) return { refused: 'The moisture of the air is not a number on some day.' };
  return { ...course, gained, profile: u };
}
