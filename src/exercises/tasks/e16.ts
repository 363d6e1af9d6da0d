/** E16: walls out of a rough board. Source of the relations: geometry. */

import { slicesByResawing, thicknessForPair } from '../../calc/board/stock.ts';
import { exercise } from '../core/exercise.ts';
import { ask, choose, exact, exactly, inches, size, slip, step, writer } from '../core/make.ts';

const names = ['none', 'one', 'two', 'three'] as const;

export const e16 = exercise({
  id: 'e16',
  title: 'Two walls from one board',
  about: 'How thick must a rough board be for two walls, and how many does this one give?',
  lesson: 'thickness-from-thickness',
  rules: ['resaw-stock'],
  draw: (from, system) =>
    system === 'mm'
      ? {
          wall: from.one([6, 7, 8, 10]),
          planing: from.one([0.5, 1, 1.5]),
          kerf: from.one([1, 1.5, 2, 3]),
          board: from.one([16, 19, 22, 25, 28, 32]),
        }
      : {
          wall: inches(from.one([1 / 4, 5 / 16, 3 / 8])),
          planing: inches(from.one([1 / 64, 1 / 32, 3 / 64])),
          kerf: inches(from.one([1 / 32, 1 / 16, 1 / 8])),
          board: inches(from.one([5 / 8, 3 / 4, 7 / 8, 1, 1.125, 1.25])),
        },
  fits: (values) => {
    const slices = slicesOf(values);
    return slices >= 1 && slices <= 3;
  },
  pose: (values, system) => {
    const w = writer(system);
    const { wall: t, planing: p, kerf: k, board } = values;
    const key = thicknessForPair.compute({ t, p, k });
    const slices = slicesOf(values);
    return {
      given: [
        { label: 'Walls', text: w(t) },
        { label: 'Planed off each face', text: w(p, system === 'mm' ? exact : size) },
        { label: 'Saw cut', text: w(k) },
        { label: 'Rough board at hand', text: w(board) },
      ],
      question:
        'How thick must a rough board be for two walls side by side? How many does the board at hand give?',
      lines: [
        step(
          [
            'resaw',
            'Add what is planed off both faces to one wall.',
            `${w(t)} + 2 × ${w(p, system === 'mm' ? exact : size)}`,
          ],
          'one rough wall',
          t + 2 * p,
          exactly(system),
          size,
          [slip('one-face', t + p, 'You planed one face. Each wall has two: add the planing twice.')],
        ),
        ask(
          ['resaw', 'Take it twice, and add the saw cut between the two.', `2 × ${w(t + 2 * p)} + ${w(k)}`],
          {
            label: 'rough board for two',
            key,
            within: exactly(system),
            print: size,
            mistakes: [
              slip(
                'no-kerf',
                key - k,
                'You left out the saw cut. The saw turns a strip between the two walls into dust: add it.',
              ),
              slip('two-kerfs', key + k, 'You counted two saw cuts. One cut parts two walls.'),
              slip(
                'two-faces',
                key - 2 * p,
                'You planed two faces. Two walls have four, for the saw leaves rough ones inside too.',
              ),
              slip(
                'no-planing',
                2 * t + k,
                'You left out the planing. All four faces are rough: add it four times.',
              ),
              slip(
                'walls-only',
                2 * t,
                'These are the walls alone. Add the planing of four faces and a saw cut.',
              ),
            ],
          },
        ),
        choose(
          [
            'resaw',
            'Lay rough walls side by side, a saw cut between any two, as long as the board is thick enough.',
            '',
          ],
          {
            label: 'walls that it gives',
            key: names[slices]!,
            options: names.map((id, at) => ({
              id,
              text: `${id[0]!.toUpperCase()}${id.slice(1)}`,
              says:
                at > slices
                  ? 'That many are thicker than the board. Count each wall with both planed faces, and a saw cut between any two.'
                  : 'One more goes in. The last wall needs no saw cut behind it: count cuts only between two walls.',
            })),
          },
        ),
      ],
    };
  },
});

/** Walls that the board gives. */
function slicesOf({
  wall: t,
  planing: p,
  kerf: k,
  board: T,
}: Record<'wall' | 'planing' | 'kerf' | 'board', number>): number {
  return slicesByResawing.compute({ T, t, p, k });
}
