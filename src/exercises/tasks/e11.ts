/** E11: glue area of a finger joint beside that of a plain miter. Source of the relations: geometry. */

import { fingerCount, heightFromFingers } from '../../calc/joints/finger-layout.ts';
import { fingerGlueArea, miterGlueArea } from '../../calc/joints/glue-area.ts';
import { exercise } from '../core/exercise.ts';
import { ask, count, inches, slip, step, writer } from '../core/make.ts';

export const e11 = exercise({
  id: 'e11',
  title: 'Glue area of a corner',
  about: 'How much glue area have fingers, and how much a miter?',
  lesson: 'which-corner-joint',
  rules: ['finger-width', 'long-grain-to-long-grain'],
  draw: (from, system) => ({
    fingers: from.step(5, 13, 2),
    finger: system === 'mm' ? from.one([5, 6, 8, 10]) : inches(from.one([3 / 16, 1 / 4, 5 / 16, 3 / 8])),
    wall: system === 'mm' ? from.one([6, 8, 10, 12]) : inches(from.one([1 / 4, 5 / 16, 3 / 8, 1 / 2])),
  }),
  // Heights of small boxes; fingers of half the wall to one and a half of it.
  fits: ({ fingers, finger, wall }) =>
    fingers * finger >= 40 && fingers * finger <= 110 && finger >= wall / 2 - 1e-6 && finger <= 1.5 * wall,
  pose: ({ fingers, finger, wall }, system) => {
    const w = writer(system);
    const H = heightFromFingers.compute({ n: fingers, f: finger });
    const n = Math.round(fingerCount.compute({ H, f: finger }));
    const t = wall;
    const cheeks = fingerGlueArea.compute({ n, t });
    const miter = miterGlueArea.compute({ H, t });
    const area = { kind: 'area', digits: system === 'mm' ? 2 : 3 } as const;
    return {
      given: [
        { label: 'Height of the corner', text: w(H) },
        { label: 'Finger width', text: w(finger) },
        { label: 'Walls', text: w(t) },
      ],
      question:
        'How much long grain is glued to long grain in a corner of fingers? How large is the glued face of a miter of the same size?',
      lines: [
        step(
          [
            'fingerCount',
            'Divide the height by the finger width: the fingers of both walls.',
            `${w(H)} divided by ${w(finger)}`,
          ],
          'fingers',
          n,
          0,
          count,
          [
            slip('one-wall', (n + 1) / 2, 'You counted the fingers of one wall. Count those of both.'),
            slip('slots', (n - 1) / 2, 'You counted the slots of one wall. Count the fingers of both.'),
          ],
        ),
        step(
          ['cheeks', 'Between two neighbors lies one cheek: one fewer than fingers.', `${n} − 1`],
          'cheeks',
          n - 1,
          0,
          count,
          [
            slip(
              'fingers',
              n,
              'These are the fingers. The two outer ones have nothing beyond them: one cheek fewer.',
            ),
          ],
        ),
        ask(
          [
            'cheeks',
            'Each cheek is as long and as deep as the wall is thick.',
            `${n - 1} × ${w(t)} × ${w(t)}`,
          ],
          {
            label: 'glue area of the fingers',
            key: cheeks,
            within: cheeks / 100,
            print: area,
            mistakes: [
              slip(
                'fingers',
                n * t * t,
                'You counted fingers. Glue sits between two of them, so there is one cheek fewer than fingers.',
              ),
              slip(
                'slots',
                ((n - 1) / 2) * t * t,
                'You counted one cheek for each slot. A slot has two: one on each side of the finger in it.',
              ),
              slip(
                'one-wall',
                ((n + 1) / 2) * t * t,
                'You counted the fingers of one wall. Each cheek lies between a finger of one wall and one of the other.',
              ),
              slip(
                'finger-wide',
                (n - 1) * t * finger,
                'You took the finger width. A cheek is the side of a finger: as long and as deep as the wall is thick.',
              ),
              slip(
                'whole-height',
                H * t,
                'This is the height times the wall. The fingers are glued at their cheeks: count those.',
              ),
            ],
          },
        ),
        ask(
          [
            'miterFace',
            'The face of a miter is as high as the corner, and 1.414 times as wide as the wall is thick.',
            `${w(H)} × 1.414 × ${w(t)}`,
          ],
          {
            label: 'glue area of the miter',
            key: miter,
            within: miter / 100,
            print: area,
            mistakes: [
              slip('no-root', H * t, 'You took the thickness. The face at 45° is 1.414 times as wide.'),
              slip(
                'twice',
                2 * H * t,
                'You took twice the thickness. The slanted face is 1.414 times as wide, not 2.',
              ),
              slip(
                'two-faces',
                2 * miter,
                'You counted both faces. They meet in one line of glue: count it once.',
              ),
            ],
          },
        ),
      ],
    };
  },
});
