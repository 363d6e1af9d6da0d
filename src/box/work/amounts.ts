/** Glue, clamps and finish for this box: each as a range, because the sources are one. */
import {
  clampForce,
  clampPressure,
  finishVolume,
  glueMass,
  glueSpread,
  type KnownRange,
  wetFilm,
} from '../../calc/glue/glue.ts';
import type { Corner } from '../design/joints/joint.ts';
import { splineSection } from '../design/joints/miter.ts';
import type { Plan } from '../design/plan.ts';
import type { Planned } from './step.ts';

export interface Amounts {
  /** Glued area of all corners, mm², and of the bottom and the pull where they are glued. */
  readonly cornerArea: number;
  readonly otherArea: number;
  /** Mass of glue for all of it, g. */
  readonly glue: KnownRange;
  /** Area of the highest corner as a clamp sees it, mm², and the force on it, N. */
  readonly clampedArea: number;
  readonly force: KnownRange;
  /** Faces to finish, inside and outside, mm²; finish for one coat, mm³. */
  readonly finishArea: number;
  readonly finish: KnownRange;
}

/** Glued faces of one corner, mm²: what is glued on end grain counts as much, it only holds less. */
function glueAreaOf(corner: Corner, plan: Plan): number {
  const { wall, values } = plan;
  const high = corner.endHeight;
  const cheek = wall * Math.hypot(wall, corner.taper);
  switch (values.joint) {
    case 'finger':
    case 'dovetail':
      return (corner.segments.length - 1) * cheek + high * wall;
    case 'rabbet':
      return 1.5 * high * wall;
    case 'butt':
      return high * wall;
    case 'mitre':
      return high * wall * Math.SQRT2;
    case 'keyed-mitre':
      // Both faces of a key; each is a right triangle with legs of wall × √2.
      return high * wall * Math.SQRT2 + corner.keys.length * 2 * wall ** 2;
    case 'splined-mitre':
      return high * wall * Math.SQRT2 + 4 * (splineSection(plan)?.depth ?? 0) * high;
  }
}

/** A bottom glued into its groove sticks by both faces of its tongue, in a rabbet by one and its edge. */
function otherGlueArea({ bottom, parts, plan }: Planned): number {
  const { bottomBand, bottomThickness } = plan;
  const around = bottom ? 2 * (bottom.length + bottom.width) : 0;
  const bottomArea = !bottom?.glued
    ? 0
    : around * (bottomBand.seat === 'groove' ? 2 * bottomBand.depth : bottomBand.depth + bottomThickness);
  const pull = parts.find(({ name }) => name === 'pull')?.finished;
  return bottomArea + (pull ? pull.length * pull.thickness : 0);
}

const both = ({ low, high, known }: KnownRange, of: (value: number) => number): KnownRange => ({
  low: of(low),
  high: of(high),
  known,
});

/** Faces of walls and panels as one sees them, mm²; edges and joints are left out. */
const facesOf = ({ parts }: Planned): number =>
  parts
    .filter(({ name }) => name !== 'keys' && name !== 'splines')
    .reduce((sum, { finished, count }) => sum + 2 * count * finished.length * finished.width, 0);

export function amountsOf(design: Planned): Amounts {
  const { corners, plan, values } = design;
  // Each corner of the list stands for two: left and right.
  const cornerArea = 2 * corners.reduce((sum, corner) => sum + glueAreaOf(corner, plan), 0);
  const otherArea = otherGlueArea(design);
  const clampedArea = Math.max(...corners.map(({ endHeight }) => endHeight)) * plan.wall;
  const finishArea = facesOf(design);
  return {
    cornerArea,
    otherArea,
    glue: both(glueSpread, (s) => glueMass.compute({ A: cornerArea + otherArea, s })),
    clampedArea,
    force: both(clampPressure(values.specificGravity), (p) => clampForce.compute({ p, A: clampedArea })),
    finishArea,
    finish: both(wetFilm, (w) => finishVolume.compute({ A: finishArea, w, n: 1 })),
  };
}
