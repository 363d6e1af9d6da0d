/** E7: the gap at the last corner of a mitered box. Source of the relation: geometry. */

import { miterGapAdded } from '../../calc/square/miters.ts';
import { exercise } from '../core/exercise.ts';
import { ask, exact, inches, native, size, slip, step, writer } from '../core/make.ts';

const cutsInAll = 8;
const radians = Math.PI / 180;

export const e7 = exercise({
  id: 'e7',
  title: 'Eight cuts of a miter',
  about: 'How wide does the last corner gape?',
  lesson: 'joint-spacing',
  rules: ['eight-cuts-of-a-miter'],
  draw: (from, system) => ({
    wall: system === 'mm' ? from.one([6, 8, 10, 12]) : inches(from.one([1 / 4, 5 / 16, 3 / 8, 1 / 2])),
    error: from.step(1, 10, 1) / 20,
  }),
  pose: ({ wall, error }, system) => {
    const w = writer(system);
    const t = wall;
    const gap = (e: number) => miterGapAdded.compute({ t, e });
    const key = gap(error);
    const face = t * Math.SQRT2;
    const degrees = (value: number) => w(value, { kind: 'angle', digits: 2 });
    return {
      given: [
        { label: 'Walls', text: w(t) },
        { label: 'Each of the eight cuts is off, the same way, by', text: degrees(error) },
      ],
      question: 'Three corners are held closed. How wide is the gap at the last one?',
      lines: [
        step(
          [
            'eightCuts',
            'Four corners have two cuts each: multiply the error by eight.',
            `8 × ${degrees(error)}`,
          ],
          'error at the last corner',
          cutsInAll * error,
          0.001,
          { kind: 'angle', digits: 2 },
          [
            slip(
              'four-cuts',
              4 * error,
              'You counted one cut for each corner. Two walls meet there, and both are cut.',
            ),
          ],
        ),
        step(
          [
            'miterFace',
            'Multiply the thickness by 1.414: this is how wide the cut face is.',
            `1.414 × ${w(t)}`,
          ],
          'width of the cut face',
          face,
          native(system, 0.06, 1 / 128),
          { ...size, ...(system === 'mm' && { digits: 2 as const }) },
          [
            slip(
              'no-root',
              t,
              'This is the thickness. A face at 45° goes through it at a slant: multiply by 1.414.',
            ),
          ],
        ),
        ask(
          [
            'eightCuts',
            'Multiply the face by the sine of that angle.',
            `${w(face)} × sin ${degrees(cutsInAll * error)}`,
          ],
          {
            label: 'gap at the last corner',
            key,
            within: native(system, 0.02, 0.001),
            print: exact,
            mistakes: [
              slip(
                'four-cuts',
                gap(error / 2),
                'This is the error of four cuts, or half of the gap. Each of the four corners has two cuts.',
              ),
              slip(
                'one-cut',
                gap(error / 8),
                'This is the error of one cut. All eight meet in the last corner: multiply by eight.',
              ),
              slip(
                'one-corner',
                gap(error / 4),
                'This is the error of one corner. Three corners are held closed, so the last one shows all four.',
              ),
              slip(
                'no-root',
                t * Math.sin(cutsInAll * error * radians),
                'You took the thickness for the face. A face at 45° is 1.414 times as wide.',
              ),
              slip(
                'radians',
                Math.abs(face * Math.sin(cutsInAll * error)),
                'Your calculator took the degrees for radians. Set it to degrees.',
              ),
            ],
          },
        ),
      ],
    };
  },
});
