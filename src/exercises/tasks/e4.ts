/** E4: how much a piece swells. Coefficients and air: Wood Handbook; common practice: damp room air of 55 to 70 %. */

import { changeByCoefficient } from '../../calc/movement/movement.ts';
import type { UnitSystem } from '../../units/index.ts';
import { exercise } from '../core/exercise.ts';
import { ask, fine, inches, native, writer } from '../core/make.ts';
import type { Draw } from '../core/seed.ts';
import {
  cuts,
  givenWood,
  moistureAt,
  moistureTable,
  movingSlips,
  perPoint,
  pointsBetween,
  pointsStep,
  ringStep,
  woodIds,
} from './wood-and-air.ts';

/** A piece of wood that is built with in drier air than it will meet. Length along the grain, width across it. */
export const drawSwelling = (from: Draw, system: UnitSystem) => ({
  wood: from.one(woodIds),
  cut: from.one(cuts),
  width: system === 'mm' ? from.step(60, 180, 5) : inches(from.step(2.5, 7, 0.25)),
  longer: system === 'mm' ? from.step(40, 120, 10) : inches(from.step(1.5, 5, 0.5)),
  from: from.step(30, 60, 5),
  to: from.step(55, 70, 5),
});

/** Damper air, and a swelling that can be told from none: over 0.4 mm, 1/64 in. */
export const swells = ({ wood, cut, width, from, to }: ReturnType<typeof drawSwelling>): boolean =>
  to >= from + 10 && width * perPoint(wood, cut).own * pointsBetween(from, to) > 0.4;

export const e4 = exercise({
  id: 'e4',
  title: 'How much it swells',
  about: 'How much wider does a panel become in damp air?',
  rules: ['write-the-humidity', 'quarter-sawn-for-lids'],
  draw: drawSwelling,
  fits: swells,
  pose: ({ wood, cut, width, longer, from, to }, system) => {
    const w = writer(system);
    const length = width + longer;
    const { own } = perPoint(wood, cut);
    return {
      given: [
        ...givenWood(wood, cut),
        { label: 'Width, across the grain', text: w(width) },
        { label: 'Length, along the grain', text: w(length) },
        { label: 'Air while you build', text: `${from} % relative humidity` },
        { label: 'Dampest air it will meet', text: `${to} % relative humidity` },
      ],
      table: moistureTable,
      question: 'By how much will it swell across the grain?',
      lines: [
        ringStep(wood, cut),
        pointsStep(from, to),
        ask(
          [
            'movement',
            'Multiply the width by the figure and by the points.',
            `${w(width)} × ${own} × ${pointsBetween(from, to)}`,
          ],
          {
            label: 'swelling',
            key: changeByCoefficient.compute({
              D: width,
              C: own,
              M_i: moistureAt(from),
              M_f: moistureAt(to),
            }),
            within: native(system, 0.1, 0.004),
            print: fine,
            mistakes: movingSlips({ wood, cut, width, length, from, to }),
          },
        ),
      ],
    };
  },
});
