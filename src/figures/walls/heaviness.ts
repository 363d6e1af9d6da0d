/** How a wall looks on a box: one word, from the usual band. */
import { thickestBand, thinnestBand, usualWall } from '../../calc/walls/walls.ts';

/** @param wall thickness, mm. @param longest the longest outside side, mm. */
export function heaviness(wall: number, longest: number): 'thin' | 'usual' | 'heavy' {
  // Room for rounding, as in the verdicts.
  const slack = 1e-6;
  if (wall < usualWall.compute({ L: longest, ...thinnestBand }) - slack) return 'thin';
  return wall > usualWall.compute({ L: longest, ...thickestBand }) + slack ? 'heavy' : 'usual';
}
