/** E15: how much a board with slanting rings moves. Coefficients: Wood Handbook; the mix of the two: theory of elasticity. */

import { woodById } from '../../box/wood/woods.ts';
import { changeByCoefficient, movementOfWidth } from '../../calc/movement/movement.ts';
import { exercise } from '../core/exercise.ts';
import { ask, fine, inches, native, plain, points, slip, step, writer } from '../core/make.ts';
import { perPoint, woodIds } from './wood-and-air.ts';

export const e15 = exercise({
  id: 'e15',
  title: 'Slanting rings',
  about: 'How much does a board move whose rings are neither flat nor upright?',
  lesson: 'reading-the-board',
  rules: ['read-the-end-grain', 'quarter-sawn-for-lids'],
  draw: (from, system) => ({
    wood: from.one(woodIds),
    slant: from.one([15, 30, 45, 60, 75]),
    width: system === 'mm' ? from.step(80, 200, 5) : inches(from.step(3, 8, 0.25)),
    up: from.step(2, 5, 0.5),
  }),
  // A growth that can be told from none: over 0.4 mm, 1/64 in.
  fits: (values) => growthOf(values) > 0.4,
  pose: ({ wood, slant, width, up }, system) => {
    const w = writer(system);
    const { name } = woodById(wood)!;
    const { own: across, other: along } = perPoint(wood, 'quarter-sawn');
    const figure = mixed({ wood, slant });
    const degrees = w(slant, { kind: 'angle', digits: 0 });
    const grows = (by: number) => width * by * up;
    const wrongWay =
      'You swapped the two figures. At 0° the rings lie flat and the one along them counts alone, so it goes with the cosine.';
    const noSquare =
      'You mixed in proportion to the degrees. The figures mix by the squares of cosine and sine, which together make one.';
    return {
      given: [
        { label: 'Wood', text: name },
        {
          label: 'It moves for each 1 % of moisture content',
          text: `${across} of its size across the rings, ${along} along them`,
        },
        { label: 'The rings slant against the wide face by', text: degrees },
        { label: 'Width of the board', text: w(width) },
        { label: 'Its moisture content rises by', text: w(up, points) },
      ],
      question: 'By how much does the board grow in width?',
      lines: [
        step(
          [
            'ringAngle',
            'Take the figure along the rings by the cosine squared of the slant, and the one across them by the sine squared; add both.',
            `${along} × (cos ${degrees})² + ${across} × (sin ${degrees})²`,
          ],
          'movement for each 1 % of moisture content',
          figure,
          figure / 100,
          plain,
          [
            slip('swapped', along + across - figure, wrongWay),
            slip('in-proportion', along + ((across - along) * slant) / 90, noSquare),
          ],
        ),
        ask(
          [
            'movement',
            'Multiply the width by this figure and by the points.',
            `${w(width)} × ${w(figure, plain)} × ${w(up, { kind: 'number' })}`,
          ],
          {
            label: 'growth',
            key: growthOf({ wood, slant, width, up }),
            within: native(system, 0.03, 0.001),
            print: fine,
            mistakes: [
              slip(
                'flat',
                grows(along),
                'You took the rings for flat. They slant, and the wood across them moves less: mix both figures.',
              ),
              slip(
                'upright',
                grows(across),
                'You took the rings for upright. They slant, and the wood along them moves more: mix both figures.',
              ),
              slip('swapped', grows(along + across - figure), wrongWay),
              slip('in-proportion', grows(along + ((across - along) * slant) / 90), noSquare),
              slip(
                'both',
                grows(along + across),
                'You added both figures whole. Each counts only for its part of the slant.',
              ),
            ],
          },
        ),
      ],
    };
  },
});

/** Movement of the width for each point, by the slant of the rings. */
function mixed({ wood, slant }: { wood: string; slant: number }): number {
  const { own: e_R, other: e_T } = perPoint(wood, 'quarter-sawn');
  return movementOfWidth.compute({ e_T, e_R, theta: slant });
}

/** Growth of the width, mm. The relation takes two moisture contents; only their difference, the points, counts. */
function growthOf(board: { wood: string; slant: number; width: number; up: number }): number {
  const dry = 7;
  return changeByCoefficient.compute({ D: board.width, C: mixed(board), M_i: dry, M_f: dry + board.up });
}
