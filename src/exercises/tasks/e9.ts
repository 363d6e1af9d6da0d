/** E9: which walls need a stopped groove, and where it stops. Source of the relations: geometry. */

import { cornerHoles, grooveStop } from '../../calc/grooves/groove-corner.ts';
import { exercise } from '../core/exercise.ts';
import { ask, choose, exactly, inches, size, slip, writer } from '../core/make.ts';

const pairs = { ends: 'front and back', sides: 'the two sides' } as const;

export const e9 = exercise({
  id: 'e9',
  title: 'Where the groove shows',
  about: 'Which walls get a stopped groove, and where does it stop?',
  lesson: 'where-the-groove-shows',
  rules: ['groove-inside-one-finger'],
  draw: (from, system) => {
    const first = from.one(['ends', 'sides'] as const);
    if (system === 'mm') {
      const [wall, depth] = from.one([
        [8, 2.5],
        [10, 3],
        [12, 4],
      ] as const);
      return {
        first,
        wall,
        depth,
        finger: from.one([6, 8, 10]),
        below: from.step(5, 14, 1),
        groove: from.one([3, 4, 6]),
      };
    }
    const [wall, depth] = from.one([
      [5 / 16, 3 / 32],
      [3 / 8, 1 / 8],
      [1 / 2, 3 / 16],
    ] as const);
    return {
      first,
      wall: inches(wall),
      depth: inches(depth),
      finger: inches(from.one([1 / 4, 5 / 16, 3 / 8])),
      below: inches(from.step(3, 9, 1) / 16),
      groove: inches(from.one([1 / 8, 3 / 16])),
    };
  },
  // The groove lies inside one finger, the first or the second.
  fits: ({ below, groove, finger }) =>
    cornerHoles(below, groove, finger).length === 1 && below < 2 * finger - 1e-6,
  pose: ({ first, wall, depth, finger, below, groove }, system) => {
    const w = writer(system);
    const other = first === 'ends' ? 'sides' : 'ends';
    const shown = cornerHoles(below, groove, finger)[0]!.pair === 'first' ? first : other;
    const within = exactly(system);
    return {
      given: [
        { label: 'At the lower edge a finger belongs to', text: pairs[first] },
        { label: 'Finger width', text: w(finger) },
        { label: 'Wood below the groove', text: w(below) },
        { label: 'Width of the groove', text: w(groove) },
        { label: 'Walls', text: w(wall) },
        { label: 'Depth of the groove', text: w(depth) },
      ],
      question:
        'The groove must not show outside. Which walls get a stopped groove, and how far from their ends does it stop?',
      lines: [
        choose(
          [
            'grooveInFinger',
            'Go up from the lower edge, finger by finger, to the groove. The walls that have a finger there would show the hole.',
            '',
          ],
          {
            label: 'walls with a stopped groove',
            key: shown,
            options: [
              ...(['ends', 'sides'] as const).map((id) => ({
                id,
                text: pairs[id],
                says: 'These walls have a socket at that height, not a finger: their groove runs out into it, unseen. The hole shows at the end of the finger that fills the socket.',
              })),
              {
                id: 'both',
                text: 'all four',
                says: 'One pair is enough: in the other the groove runs out into a socket, where nobody sees it.',
              },
              {
                id: 'none',
                text: 'none',
                says: 'At the height of the groove one pair of walls has a finger, and its end is seen outside.',
              },
            ],
          },
        ),
        ask(
          [
            'grooveStop',
            'From the wall’s thickness take the depth that the panel reaches into the neighbor.',
            `${w(wall)} − ${w(depth)}`,
          ],
          {
            label: 'from the end',
            key: grooveStop.compute({ t: wall, g: depth }),
            within,
            print: size,
            mistakes: [
              slip(
                'whole-wall',
                wall,
                'You stopped a whole wall from the end. The panel reaches into the neighbor’s groove: go that much farther.',
              ),
              slip(
                'depth',
                depth,
                'This is the depth of the groove. That close to the end it would break out: take it from the wall’s thickness.',
              ),
              slip(
                'added',
                wall + depth,
                'You added the depth. The panel’s corner lies beyond the inner face of the neighbor, not before it: subtract.',
              ),
              slip(
                'half-wall',
                wall / 2,
                'You took half the wall. Where the panel ends decides: the wall’s thickness less the depth.',
              ),
            ],
          },
        ),
      ],
    };
  },
});
