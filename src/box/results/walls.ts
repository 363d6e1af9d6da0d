/** Results of the lesson on wall thickness and size. */
import * as push from '../../calc/side-push.ts';
import * as walls from '../../calc/walls.ts';
import * as mass from '../../calc/wood-mass.ts';
import type { Box } from '../box.ts';
import type { ResultTable } from '../result.ts';
import { woodById } from '../woods.ts';
import { type BottomResults, bottomResults } from './bottom.ts';
import type { SizeResults } from './sizes.ts';
import type { WoodFigures } from './wood.ts';

export interface WallsResults extends BottomResults {
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
}

type Values = Box & WoodFigures & SizeResults & WallsResults;

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
    denominator: 32,
    relation: walls.usualWall,
    given: (v) => ({ L: longest(v), ...walls.thinnestBand }),
    rule,
  },
  thickestUsualWall: {
    label: 'thickest usual wall for this size',
    kind: 'length',
    denominator: 32,
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
    round: 'up',
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
  ...bottomResults,
};
