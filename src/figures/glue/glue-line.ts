/** The face of a wall across a line of glue: how high it stands while wet, and so how deep it lies once leveled and dry. */
import { diffusionOf } from '../../box/subjects/air/wait.ts';
import { waterGiven } from '../../box/subjects/glue/results.ts';
import type { Values } from '../../box/whole/index.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { besideLine, sunkenLine, waterAtLine } from '../../calc/glue/water.ts';

/** Diffusion coefficient in this box's wood, mm²/day: the middle, and the ends of what is known. */
export function creepOf(v: Values): { low: number; middle: number; high: number } {
  const D = diffusionOf(v, v.moistureToday);
  return isRefused(D) ? { low: Number.NaN, middle: Number.NaN, high: Number.NaN } : D;
}

/** How deep the line sinks on each face if it is leveled so many days after gluing, mm. */
export const sinksAfter = (v: Values, days: number, diffusion?: number): number =>
  sunkenLine.compute({
    T: v.wall,
    C: v.tangentialCoefficient,
    dM: waterAtLine.compute(waterGiven(v, days, diffusion)),
  });

/** Heights of the bell across the line, [mm beside it, share of its height]. */
export function bell(v: Values, days: number, reach: number, points = 40): [number, number][] {
  const { middle } = creepOf(v);
  return Array.from({ length: points + 1 }, (_, i) => {
    const away = (2 * i * reach) / points - reach;
    return [away, besideLine(away, middle, days)];
  });
}
