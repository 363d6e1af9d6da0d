/** A mitered corner from above after a dry winter: where does it open? Each option is drawn, its wedge as wide as the true one. */
import type { Values } from '../../box/whole/index.ts';
import { miterSeasonGap } from '../../calc/joints/miter-season.ts';
import { Drawing } from '../parts/Drawing.tsx';

/** Points of moisture that the walls lose in this guess. */
export const pointsLost = 4;
/** How many times larger than true the wedge is drawn. */
export const timesLarger = 20;

/** Width of the wedge, mm, in walls whose thickness moves as much as their wood can: along the rings. */
export const wedgeOf = ({ wall, tangentialCoefficient }: Values): number =>
  miterSeasonGap.compute({ t: wall, C: tangentialCoefficient, dM: pointsLost });

/** Thinner walls turn their faces away from each other at the inner edge. */
export const openSide = (v: Values): string => (wedgeOf(v) > 0 ? 'inside' : 'shut');

const [size, corner, thick] = [120, 12, 46] as const;

export function DryMiter({ values: v, option }: { values: Values; option: string }) {
  const far = size - corner;
  // Along either wall the wedge is narrower than across it, by the diagonal.
  const wedge = ((wedgeOf(v) * timesLarger) / Math.SQRT2) * (thick / v.wall);
  const [outer, inner] = [option === 'outside' ? wedge : 0, option === 'inside' ? wedge : 0];
  const heel = corner + thick;
  return (
    <Drawing
      view={[0, 0, size, size]}
      title="A mitered corner from above"
      description={
        option === 'shut' ? 'It stays shut.' : `It is open on the ${option}, drawn ${timesLarger} times.`
      }
    >
      <path class="wood" d={`M${corner + outer} ${corner}H${far}V${heel - inner}H${heel}z`} />
      <path class="wood" d={`M${corner} ${corner + outer}V${far}H${heel - inner}V${heel}z`} />
    </Drawing>
  );
}
