/** The life of a panel of the box in one invented year, that of a heated house: what the guesses on the year are about. */
import { climates } from '../../../calc/air/climates.ts';
import { waveKept } from '../../../calc/air/diffusion-series.ts';
import { ROOM_SURFACE } from '../../../calc/air/slab.ts';
import { DAYS_IN_YEAR } from '../../../calc/air/year.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import { fromDay } from '../../../calc/movement/build-season.ts';
import { type PanelCourse, panelCourse } from '../../../calc/movement/panel-year.ts';
import { moistureOf, type PanelMoisture, setupOf } from './panel-year.ts';
import type { MovementValues, PanelName } from './results.ts';

/** Dry in winter, damp in summer. */
export const heatedHouse = climates[0]!.year;

export interface HeatedYear extends PanelMoisture {
  /** Days by which the yearly wave of the panel comes after that of the air, for the middle of what is known. */
  readonly behind: number;
  /** The day of the year on which the panel is dampest, 0 to 364. */
  readonly dampestDay: number;
}

/** Moisture of a panel through the year; a refusal where its wood has no density. */
export function heatedYear(v: MovementValues, part: PanelName): HeatedYear | Refused {
  const moisture = moistureOf(v, part, heatedHouse);
  if (isRefused(moisture)) return moisture;
  if (moisture.because) return { refused: moisture.because };
  const thickness = part === 'bottom' ? v.bottomThickness : v.lidThickness;
  // One face sealed: as one of twice its thickness in the open.
  const slab = { thickness: 2 * thickness, diffusion: moisture.diffusion, surface: ROOM_SURFACE };
  const wave = waveKept(slab, DAYS_IN_YEAR);
  if (isRefused(wave)) return wave;
  const { middle } = moisture;
  return { ...moisture, behind: wave.lag, dampestDay: middle.indexOf(Math.max(...middle)) % DAYS_IN_YEAR };
}

export interface HeatedLife extends PanelCourse {
  /** Play on the day it was fitted, both sides together, mm. */
  readonly fitted: number;
  /** How much wider it gets in the year that follows, mm. */
  readonly grows: number;
}

/** What becomes of the panel fitted on a day of that year, 0 to 364. */
export function heatedLife(v: MovementValues, part: PanelName, built: number): HeatedLife | Refused {
  const moisture = moistureOf(v, part, heatedHouse);
  if (isRefused(moisture)) return moisture;
  const setup = setupOf(v, part);
  const course = panelCourse(setup, fromDay(moisture.middle, built));
  if (isRefused(course)) return course;
  return { ...course, fitted: setup.play, grows: setup.play - Math.min(...course.play) };
}
