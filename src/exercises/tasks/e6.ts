/**
 * E6: the length of board for four mitered walls. A blade tilted to 45° takes its kerf × √2 off the face (geometry);
 * 12 mm, 1/2 in to trim the ends is common practice.
 */

import { boardLengthForParts, wallsInARow } from '../../calc/board/strip-length.ts';
import { exercise } from '../core/exercise.ts';
import { ask, inches, native, size, slip, step, writer } from '../core/make.ts';

/** Places between four walls in a row. */
const places = 3;

export const e6 = exercise({
  id: 'e6',
  title: 'Length of board',
  about: 'How long a board do four mitered walls take?',
  lesson: 'grain-round-the-corner',
  rules: ['board-length', 'walk-round-order'],
  draw: (from, system) =>
    system === 'mm'
      ? {
          length: from.step(150, 320, 2),
          width: from.step(80, 200, 2),
          kerf: from.one([1, 1.5, 2, 2.4, 3, 3.2]),
        }
      : {
          length: inches(from.step(6, 13, 0.125)),
          width: inches(from.step(3.5, 8, 0.125)),
          kerf: inches(from.one([1 / 16, 3 / 32, 1 / 8])),
        },
  fits: ({ length, width }) => length >= width + 20,
  pose: ({ length, width, kerf }, system) => {
    const w = writer(system);
    const trim = native(system, 12, 0.5);
    const P = wallsInARow.compute({ q: 2, L: length, W: width, i: 0 });
    const board = (changed: object) =>
      boardLengthForParts.compute({ P, n: 0, c: places, k: kerf, m: trim, ...changed });
    const within = native(system, 1, 1 / 32);
    const onFace = kerf * Math.SQRT2;
    return {
      given: [
        { label: 'Outside length', text: w(length) },
        { label: 'Outside width', text: w(width) },
        { label: 'Kerf of the blade, tilted to 45°', text: w(kerf) },
        { label: 'To trim both ends together', text: w(trim) },
      ],
      question:
        'The four walls are cut one after the other, outer face up, with one cut between two walls. How long must the board be?',
      lines: [
        step(
          [
            'pairs',
            'Add up the four walls: mitered, each is as long as the box is outside.',
            `2 × (${w(length)} + ${w(width)})`,
          ],
          'walls together',
          P,
          within,
          size,
          [slip('one-pair', P / 2, 'This is one long and one short wall. The box has two of each.')],
        ),
        step(
          [
            'kerf',
            'A blade at 45° crosses the face at a slant: multiply its kerf by 1.41, and by the three cuts.',
            `3 × 1.41 × ${w(kerf)}`,
          ],
          'wood lost in the cuts',
          places * onFace,
          native(system, 0.15, 1 / 128),
          { ...size, ...(system === 'mm' && { digits: 1 as const }) },
          [
            slip(
              'square-cuts',
              places * kerf,
              'You counted square cuts. A tilted blade takes 1.41 times its kerf off the face.',
            ),
          ],
        ),
        ask(['kerf', 'Add walls, cuts and trim.', `${w(P)} + ${w(places * onFace)} + ${w(trim)}`], {
          label: 'length of the board',
          key: board({}),
          within,
          print: size,
          mistakes: [
            slip(
              'no-kerfs',
              board({ c: 0 }),
              'You left out the kerfs. Each of the three cuts between walls eats wood.',
            ),
            slip(
              'square-cuts',
              board({ c: 0, n: places }),
              'You counted each kerf once, as for a square cut. A blade tilted to 45° takes 1.41 times its kerf off the face.',
            ),
            slip('no-trim', board({ m: 0 }), 'You left nothing to trim the two ends of the board.'),
            slip(
              'one-pair',
              board({ P: P / 2 }),
              'You counted one long and one short wall. The box has two of each.',
            ),
            slip('no-kerfs-no-trim', P, 'These are the walls alone. Add the three cuts and the trim.'),
          ],
        }),
      ],
    };
  },
});
