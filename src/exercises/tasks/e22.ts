/** E22: whether the glue waits for the last clamp. Source of the relations: geometry, and times that add up. */

import { facesToGlue, glueUpTime } from '../../calc/glue/glue-up.ts';
import { exercise } from '../core/exercise.ts';
import { ask, choose, count, slip, step, writer } from '../core/make.ts';

export const e22 = exercise({
  id: 'e22',
  title: 'Does the glue wait?',
  about: 'How many faces take glue, how long does it last, and is that in time?',
  lesson: 'glue-up-without-surprises',
  rules: ['dry-fit-in-half-the-open-time'],
  draw: (from) => ({
    fingers: from.step(5, 15, 2),
    spread: from.step(4, 10, 1),
    steps: from.step(8, 14, 1),
    each: from.step(10, 30, 5),
    open: from.step(5, 20, 1),
  }),
  // Not so near the open time that nobody could say.
  fits: (values) => Math.abs(minutesOf(values).all - values.open) > 0.7,
  pose: (values, system) => {
    const w = writer(system);
    const { fingers: n, spread, steps, each, open } = values;
    const { faces, all } = minutesOf(values);
    const minutes = (spreadOn: number, others: number) => (spreadOn * spread + others * each) / 60;
    const number = { kind: 'number', digits: 1 } as const;
    const inTime = all <= open;
    const late =
      'The minutes are more than the open time: the first faces would have set before the last clamp.';
    return {
      given: [
        { label: 'Fingers at a corner, both walls counted', text: w(n, count) },
        { label: 'To spread glue on one face', text: `${spread} seconds` },
        { label: 'Other steps, with the clamps', text: w(steps, count) },
        { label: 'For each of these', text: `${each} seconds` },
        { label: 'Open time of the glue', text: `${open} minutes` },
      ],
      question:
        'How many faces take glue at the four corners, one of each pair that meets? How many minutes does it all last? What do you do?',
      lines: [
        step(
          ['cheeks', 'Between two neighbors lies one cheek: one fewer than fingers.', `${n} − 1`],
          'faces at one corner',
          n - 1,
          0,
          count,
          [
            slip(
              'fingers',
              n,
              'These are the fingers. The two outer ones have nothing beyond them: one face fewer.',
            ),
          ],
        ),
        ask(['gluedFaces', 'A box has four corners: multiply by four.', `4 × ${n - 1}`], {
          label: 'faces that take glue',
          key: faces,
          within: 0,
          print: count,
          mistakes: [
            slip('one-corner', n - 1, 'These are the faces of one corner. A box has four.'),
            slip(
              'fingers',
              4 * n,
              'You counted fingers. Glue sits between two of them: one face fewer at each corner.',
            ),
            slip(
              'both',
              2 * faces,
              'You counted both faces of each pair. The question is for one of each pair that meets.',
            ),
            slip(
              'one-wall',
              2 * (n + 1),
              'You counted the fingers of one wall at each corner. Faces lie between the fingers of both.',
            ),
          ],
        }),
        ask(
          [
            'openTime',
            'Add the seconds for the faces and for the other steps, and divide by 60.',
            `(${faces} × ${spread} + ${steps} × ${each}) divided by 60`,
          ],
          {
            label: 'minutes',
            key: all,
            within: 0.1,
            print: number,
            mistakes: [
              slip(
                'spreading-only',
                minutes(faces, 0),
                'These are the minutes for spreading. The other steps and the clamps come after it: add them.',
              ),
              slip(
                'dry',
                minutes(0, steps),
                'This is the trial without glue. Spreading takes time as well: add it.',
              ),
              slip(
                'one-corner',
                minutes(n - 1, steps),
                'You spread one corner. All four are wet before the last clamp.',
              ),
              slip('seconds', all * 60, 'These are seconds. Divide by 60.'),
            ],
          },
        ),
        choose(['openTime', 'Compare the minutes with the open time.', ''], {
          label: 'what you do',
          key: inTime ? 'begin' : 'slower',
          options: [
            { id: 'begin', text: 'Begin: it is in time', says: late },
            {
              id: 'slower',
              text: 'Take a glue that stays open longer, or glue in two stages',
              says: 'The minutes are fewer than the open time: this glue waits long enough.',
            },
            {
              id: 'press',
              text: 'Begin, and press harder at the corners that have set',
              says: 'A clamp cannot undo what has set: glue that has skinned over does not wet the other face.',
            },
          ],
        }),
      ],
    };
  },
});

/** Faces of four corners, and minutes from the first stroke to the last clamp. */
function minutesOf({
  fingers,
  spread,
  steps,
  each,
}: Record<'fingers' | 'spread' | 'steps' | 'each', number>) {
  const faces = facesToGlue.compute({ m: fingers - 1 });
  return { faces, all: glueUpTime.compute({ N: faces, s_f: spread, k: steps, s_k: each }) };
}
