/** Results of the lesson on wall thickness and size. Over 150 lines: one table, a row for each number. */

import { work } from '../../../calc/core/working.ts';
import * as push from '../../../calc/walls/side-push.ts';
import * as walls from '../../../calc/walls/walls.ts';
import * as mass from '../../../calc/walls/wood-mass.ts';
import { practice } from '../../core/practice.ts';
import { choiceOf, type ResultTable, rowsOf } from '../../core/result.ts';
import type { WoodFigures } from '../../wood/figures.ts';
import { woodById } from '../../wood/woods.ts';
import type { Box } from '../inputs.ts';
import type { SizeResults } from '../size/results.ts';

export interface WallsResults {
  /** One wall, % of the outside length and width. */
  readonly wallShareOfLength: number;
  readonly wallShareOfWidth: number;
  /** Ends of the usual band for the longest side, mm. */
  readonly thinnestUsualWall: number;
  readonly thickestUsualWall: number;
  /** Around the contents where it is tightest, mm. */
  readonly roomLeft: number;
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

export type WallsValues = Box & WoodFigures & SizeResults & WallsResults;
type V = WallsValues;

/** Moisture content at which the tables give their figures, %. */
const tableMoisture = 12;
const water = 1000;

const rule = 'wall-thickness';
const row = rowsOf<V>();
/** kg/m³ */
const panelDensity = (v: V, of: Box['bottom']) =>
  of === 'plywood' ? 1000 * practice.plywoodDensity : v.woodDensity;
const longest = (v: V) => Math.max(v.outsideLength, v.outsideWidth, v.outsideHeight);
const alongGrain = (v: V) => push.stiffnessAlongGrain.compute({ E_b: v.modulusOfElasticity });
const pushed = (v: V) => ({
  P: v.push,
  L: v.insideLength,
  E: alongGrain(v),
  H: v.outsideHeight,
  t: v.wall,
});
/** Imported woods are printed with a specific gravity on the green volume. */
const onGreenVolume = (v: V) => woodById(v.species)?.group === 'imported';

export const wallsResults: ResultTable<keyof WallsResults, V> = {
  wallShareOfLength: row(walls.wallShare, (v) => ({ t: v.wall, L: v.outsideLength }), {
    rule,
    label: 'one wall as a share of the length',
    kind: 'percent',
  }),
  wallShareOfWidth: row(walls.wallShare, (v) => ({ t: v.wall, L: v.outsideWidth }), {
    rule,
    label: 'one wall as a share of the width',
    kind: 'percent',
  }),
  thinnestUsualWall: row(walls.usualWall, (v) => ({ L: longest(v), ...walls.thinnestBand }), {
    rule,
    label: 'thinnest usual wall for this size',
    kind: 'length',
    denominator: 32,
  }),
  thickestUsualWall: row(walls.usualWall, (v) => ({ L: longest(v), ...walls.thickestBand }), {
    rule,
    label: 'thickest usual wall for this size',
    kind: 'length',
    denominator: 32,
  }),
  roomLeft: row(
    walls.tightestRoom,
    (v) => ({
      l: v.clearLength,
      w: v.clearWidth,
      h: v.insideHeight,
      c_l: v.contentsLength,
      c_w: v.contentsWidth,
      c_h: v.contentsHeight,
    }),
    {
      label: 'room the walls leave around the contents',
      kind: 'length',
      builds: true,
      rule: 'walls-cost-inside-volume',
    },
  ),
  shareNotInside: row(
    walls.shareNotInside,
    (v) => ({
      l: v.clearLength,
      w: v.clearWidth,
      h: v.insideHeight,
      L: v.outsideLength,
      W: v.outsideWidth,
      H: v.outsideHeight,
    }),
    {
      label: 'share of the outside that is not inside',
      kind: 'percent',
      digits: 0,
      rule: 'walls-cost-inside-volume',
    },
  ),
  woodDensity: choiceOf<V>()(
    [mass.woodDensity, mass.woodDensityFromGreen],
    (v) =>
      onGreenVolume(v)
        ? work(mass.woodDensityFromGreen, { G_b: v.specificGravity, M: tableMoisture, rho_w: water })
        : work(mass.woodDensity, { G: v.specificGravity, M: tableMoisture, rho_w: water }),
    { label: 'density of the wood, kg/m³ at 12 % moisture', kind: 'number', digits: 0 },
  ),
  emptyMass: row(
    mass.boxMass,
    (v) => ({
      rho: v.woodDensity,
      rho_b: panelDensity(v, v.bottom),
      rho_d: panelDensity(v, v.lid),
      L: v.outsideLength,
      W: v.outsideWidth,
      H: v.outsideHeight,
      l: v.insideLength,
      w: v.insideWidth,
      b: v.bottomThickness,
      d: v.lidThickness,
    }),
    {
      rule,
      label: 'mass of walls, bottom and lid, as plain boards',
      kind: 'mass',
    },
  ),
  sidePushFree: row(push.sidePushFree, pushed, {
    rule,
    label: 'a long side gives at most',
    kind: 'length',
    as: 'fine',
    round: 'up',
  }),
  sidePushHeld: row(push.sidePushHeld, pushed, {
    rule,
    label: 'with its ends held fast it gives',
    kind: 'length',
    as: 'fine',
  }),
  sidePushStress: row(push.sidePushStress, pushed, {
    rule,
    label: 'stress in the pushed side',
    kind: 'stress',
  }),
};
