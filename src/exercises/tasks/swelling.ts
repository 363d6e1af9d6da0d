/** A piece whose width changes with the air: what its exercises give, and the steps and slips up to that change. */

import { changeByCoefficient } from '../../calc/movement/movement.ts';
import type { UnitSystem } from '../../units/index.ts';
import { inches, native, writer } from '../core/make.ts';
import type { Draw } from '../core/seed.ts';
import {
  cuts,
  givenWood,
  moistureAt,
  movingSlips,
  perPoint,
  pointsBetween,
  pointsStep,
  ringStep,
  woodIds,
} from './wood-and-air.ts';

/** Width across the grain, and how much longer it is along it, mm; relative humidities before and after, %. */
interface Piece {
  readonly wood: string;
  readonly cut: string;
  readonly width: number;
  readonly longer: number;
  readonly from: number;
  readonly to: number;
}

/** A piece of wood that is built with in drier air than it will meet. */
export const drawSwelling = (from: Draw, system: UnitSystem) => ({
  wood: from.one(woodIds),
  cut: from.one(cuts),
  width: system === 'mm' ? from.step(60, 180, 5) : inches(from.step(2.5, 7, 0.25)),
  longer: system === 'mm' ? from.step(40, 120, 10) : inches(from.step(1.5, 5, 0.5)),
  from: from.step(30, 60, 5),
  to: from.step(55, 70, 5),
});

/** Damper air, and a swelling that can be told from none: over 0.4 mm, 1/64 in. */
export const swells = ({ wood, cut, width, from, to }: Piece): boolean =>
  to >= from + 10 && width * perPoint(wood, cut).own * pointsBetween(from, to) > 0.4;

/** Change of a free width, growth positive, mm. */
export const changeOf = ({ wood, cut, width, from, to }: Omit<Piece, 'longer'>): number =>
  changeByCoefficient.compute({
    D: width,
    C: perPoint(wood, cut).own,
    M_i: moistureAt(from),
    M_f: moistureAt(to),
  });

/** How near a change of width is right, mm. */
export const nearChange = (system: UnitSystem): number => native(system, 0.1, 0.004);

/** What is given about a piece, under the labels of the exercise: width, length, air before and after. */
export function givenPiece(
  { wood, cut, width, longer, from, to }: Piece,
  system: UnitSystem,
  [across, along, before, after]: readonly [across: string, along: string, before: string, after: string],
) {
  const w = writer(system);
  return [
    ...givenWood(wood, cut),
    { label: across, text: w(width) },
    { label: along, text: w(width + longer) },
    { label: before, text: `${from} % relative humidity` },
    { label: after, text: `${to} % relative humidity` },
  ];
}

/** The first two steps: which figure, and how many points of moisture. */
export const stepsToPoints = ({ wood, cut, from, to }: Piece) => [ringStep(wood, cut), pointsStep(from, to)];

/** The third: the change of width. */
export const changeWay = ({ wood, cut, width, from, to }: Piece, system: UnitSystem, called = 'width') =>
  [
    'movement',
    `Multiply the ${called} by the figure and by the points.`,
    `${writer(system)(width)} × ${perPoint(wood, cut).own} × ${pointsBetween(from, to)}`,
  ] as const;

/** What the usual slips up to the change give; `then` makes the answer from the change. */
export const changeSlips = ({ longer, ...piece }: Piece, then?: (change: number) => number) =>
  movingSlips({ ...piece, length: piece.width + longer }, then);
