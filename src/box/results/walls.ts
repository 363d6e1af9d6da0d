/** Results of the lesson on wall thickness and size. */
import * as bottom from '../../calc/bottom.ts';
import * as push from '../../calc/side-push.ts';
import * as walls from '../../calc/walls.ts';
import * as mass from '../../calc/wood-mass.ts';
import type { Box } from '../box.ts';
import type { ResultTable } from '../result.ts';
import { woodById } from '../woods.ts';
import type { SizeResults } from './sizes.ts';
import type { WoodFigures } from './wood.ts';

export interface WallsResults {
  /** One wall, % of the outside length and width. */
  readonly wallShareOfLength: number;
  readonly wallShareOfWidth: number;
  /** Ends of the usual band for the longest side, mm. */
  readonly thinnestUsualWall: number;
  readonly thickestUsualWall: number;
  /** % of the outside volume. */
  readonly shareNotInside: number;
  /** kg/m³ at 12 % MC, and g. */
  readonly woodDensity: number;
  readonly emptyMass: number;
  /** A long side pushed at mid-span: mm between free and held ends, and MPa with free ones. */
  readonly sidePushFree: number;
  readonly sidePushHeld: number;
  readonly sidePushStress: number;
  /** mm under 1 kg. */
  readonly bottomSag: number;
  /** Against a 3 mm bottom: % of its motion, and times its pitch. */
  readonly tapMotion: number;
  readonly tapPitch: number;
}

type Values = Box & WoodFigures & SizeResults & WallsResults;

/** A thin bottom to compare with, mm (about 1/8 in). */
export const thinBottom = 3;
/** Weight of 1 kg, N. */
const kilogram = 9.80665;
/** Stiffness of plywood, MPa: from memory; sheets differ by half and more. */
const plywoodStiffness = 8000;
/** Moisture content at which the tables give their figures, %. */
const tableMoisture = 12;
const water = 1000;

const rule = 'wall-thickness';
const longest = (v: Values) => Math.max(v.outsideLength, v.outsideWidth, v.outsideHeight);
const alongGrain = (v: Values) => push.stiffnessAlongGrain.compute({ E_b: v.modulusOfElasticity });
const pushed = (v: Values) => ({
  P: v.push,
  L: v.insideLength,
  E: alongGrain(v),
  H: v.outsideHeight,
  t: v.wall,
});
const againstThin = (v: Values) => ({ h: v.bottomThickness, h_0: thinBottom });
/** Imported woods are printed with a specific gravity on the green volume. */
const onGreenVolume = (v: Values) => woodById(v.species)?.group === 'imported';

export const wallsResults: ResultTable<keyof WallsResults, Values> = {
  wallShareOfLength: {
    label: 'one wall as a share of the length',
    kind: 'percent',
    relation: walls.wallShare,
    given: (v) => ({ t: v.wall, L: v.outsideLength }),
    rule,
  },
  wallShareOfWidth: {
    label: 'one wall as a share of the width',
    kind: 'percent',
    relation: walls.wallShare,
    given: (v) => ({ t: v.wall, L: v.outsideWidth }),
    rule,
  },
  thinnestUsualWall: {
    label: 'thinnest usual wall for this size',
    kind: 'length',
    relation: walls.usualWall,
    given: (v) => ({ L: longest(v), ...walls.thinnestBand }),
    rule,
  },
  thickestUsualWall: {
    label: 'thickest usual wall for this size',
    kind: 'length',
    relation: walls.usualWall,
    given: (v) => ({ L: longest(v), ...walls.thickestBand }),
    rule,
  },
  shareNotInside: {
    label: 'share of the outside that is not inside',
    kind: 'percent',
    digits: 0,
    relation: walls.shareNotInside,
    given: (v) => ({
      l: v.insideLength,
      w: v.insideWidth,
      h: v.insideHeight,
      L: v.outsideLength,
      W: v.outsideWidth,
      H: v.outsideHeight,
    }),
    rule: 'walls-cost-inside-volume',
  },
  woodDensity: {
    label: 'density of the wood, kg/m³ at 12 % moisture',
    kind: 'number',
    digits: 0,
    relation: {
      among: [mass.woodDensity, mass.woodDensityFromGreen],
      choose: (v) => (onGreenVolume(v) ? mass.woodDensityFromGreen : mass.woodDensity),
    },
    given: (v) => ({ G: v.specificGravity, G_b: v.specificGravity, M: tableMoisture, rho_w: water }),
  },
  emptyMass: {
    label: 'mass of the empty box',
    kind: 'mass',
    relation: mass.boxMass,
    given: (v) => ({
      rho: v.woodDensity,
      L: v.outsideLength,
      W: v.outsideWidth,
      H: v.outsideHeight,
      l: v.insideLength,
      w: v.insideWidth,
      b: v.bottomThickness,
      d: v.lidThickness,
    }),
    rule,
  },
  sidePushFree: {
    label: 'a long side gives at most',
    kind: 'length',
    digits: 2,
    relation: push.sidePushFree,
    given: pushed,
    rule,
  },
  sidePushHeld: {
    label: 'with its ends held fast it gives',
    kind: 'length',
    digits: 2,
    relation: push.sidePushHeld,
    given: pushed,
    rule,
  },
  sidePushStress: {
    label: 'stress in the pushed side',
    kind: 'stress',
    relation: push.sidePushStress,
    given: pushed,
    rule,
  },
  bottomSag: {
    label: 'sag of the bottom under 1 kg (2.2 lb), at most',
    kind: 'length',
    digits: 2,
    round: 'up',
    relation: bottom.bottomSagBound,
    given: (v) => ({
      F: kilogram,
      a: v.insideLength,
      b: v.insideWidth,
      E: v.bottom === 'plywood' ? plywoodStiffness : alongGrain(v),
      h: v.bottomThickness,
    }),
    rule: 'bottom-thickness',
  },
  tapMotion: {
    label: 'motion of a tap, against a 3 mm (1/8 in) bottom',
    kind: 'percent',
    digits: 0,
    relation: bottom.tapMotion,
    given: againstThin,
    rule: 'thicker-bottom-sounds-quieter',
  },
  tapPitch: {
    label: 'pitch, times that of a 3 mm (1/8 in) bottom',
    kind: 'ratio',
    digits: 1,
    relation: bottom.tapPitch,
    given: againstThin,
    rule: 'thicker-bottom-sounds-quieter',
  },
};
