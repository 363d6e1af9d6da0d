/** E17: how long wood of another thickness needs. The time of a slab goes with its thickness squared: theory of diffusion. */

import { ninetyTime } from '../../calc/air/diffusion-series.ts';
import { exercise } from '../core/exercise.ts';
import { ask, inches, plain, slip, step, writer } from '../core/make.ts';

export const e17 = exercise({
  id: 'e17',
  title: 'How long until it settles',
  about: 'How many days does a thicker board need to follow the air?',
  lesson: 'air-and-wood',
  rules: ['thickness-squared', 'wait-until-it-stops-changing'],
  draw: (from, system) => ({
    offcut: system === 'mm' ? from.one([6, 8, 10]) : inches(from.one([1 / 4, 5 / 16, 3 / 8])),
    board: system === 'mm' ? from.step(8, 28, 1) : inches(from.step(3 / 8, 1, 1 / 16)),
    days: from.step(3, 9, 1),
  }),
  fits: ({ offcut, board }) => board >= 1.3 * offcut && board <= 3 * offcut,
  pose: ({ offcut, board, days }, system) => {
    const w = writer(system);
    // Of one wood in one room, so its diffusion is the same and cancels.
    const slower = ninetyTime.compute({ T: board, D: 1 }) / ninetyTime.compute({ T: offcut, D: 1 });
    const ratio = board / offcut;
    const number = { ...plain, digits: 2 } as const;
    const key = days * slower;
    return {
      given: [
        { label: 'An offcut of this wood, thick', text: w(offcut) },
        { label: 'It made nine tenths of its change in', text: w(days, { kind: 'days' }) },
        { label: 'The board beside it, thick', text: w(board) },
      ],
      question: 'In about how many days does the board make nine tenths of its change?',
      lines: [
        step(
          [
            'timeSquared',
            'Divide the thickness of the board by that of the offcut.',
            `${w(board)} divided by ${w(offcut)}`,
          ],
          'times as thick',
          ratio,
          0.02,
          number,
          [
            slip(
              'upside-down',
              1 / ratio,
              'You divided the offcut by the board. The board is thicker: the number is above one.',
            ),
          ],
        ),
        step(
          ['timeSquared', 'Multiply this number by itself.', `${w(ratio, number)} × ${w(ratio, number)}`],
          'times as long',
          slower,
          slower / 40,
          number,
          [
            slip(
              'linear',
              ratio,
              'This is how much thicker it is. The way gets longer and there is more to carry: square it.',
            ),
          ],
        ),
        ask(
          [
            'timeSquared',
            'Multiply the days of the offcut by that.',
            `${w(days, number)} × ${w(slower, number)}`,
          ],
          {
            label: 'days for the board',
            key,
            within: key / 20,
            print: { kind: 'days', digits: 1 },
            mistakes: [
              slip(
                'linear',
                days * ratio,
                'You let time grow with the thickness. It grows with its square: the way to the middle is longer, and there is more moisture to carry.',
              ),
              slip('same', days, 'These are the days of the offcut. A thicker board needs longer.'),
              slip(
                'cube',
                days * ratio ** 3,
                'You took the cube. Time goes with the square of the thickness.',
              ),
              slip(
                'twice',
                days * 2 * ratio,
                'You doubled the number. To square is to multiply it by itself.',
              ),
              slip(
                'upside-down',
                days / slower,
                'You divided. The thicker board needs more time, not less: multiply.',
              ),
            ],
          },
        ),
      ],
    };
  },
});
