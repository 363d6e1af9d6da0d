/** E20: a thicker bottom, tapped and loaded. Sources of the relations: theory of thin plates, theory of beams. */

import { bottomSagBound, tapMotion } from '../../calc/bottom/bottom.ts';
import { exercise } from '../core/exercise.ts';
import { ask, fine, inches, native, plain, slip, step, writer } from '../core/make.ts';

export const e20 = exercise({
  id: 'e20',
  title: 'A thicker bottom',
  about: 'How far does it still sag, and how far does a tap move it?',
  lesson: 'the-bottom-you-can-hear',
  rules: ['bottom-thickness', 'thicker-bottom-sounds-quieter'],
  draw: (from, system) =>
    system === 'mm'
      ? { before: from.one([3, 4, 5]), after: from.step(4, 9, 0.5), sag: from.step(0.6, 2, 0.1) }
      : {
          before: inches(from.one([1 / 8, 5 / 32, 3 / 16])),
          after: inches(from.step(5 / 32, 3 / 8, 1 / 32)),
          sag: inches(from.step(0.024, 0.08, 0.004)),
        },
  fits: ({ before, after }) => after >= 1.2 * before && after <= 2.1 * before,
  pose: ({ before, after, sag }, system) => {
    const w = writer(system);
    const ratio = after / before;
    const number = { ...plain, digits: 2 } as const;
    // Of one wood, size and load, which are the same before and after and cancel.
    const sagOf = (h: number) => bottomSagBound.compute({ F: 1, a: 100, b: 100, E: 1e4, h });
    const key = (sag * sagOf(after)) / sagOf(before);
    const motion = tapMotion.compute({ h: after, h_0: before });
    return {
      given: [
        { label: 'Bottom now', text: w(before) },
        { label: 'It sags under its load by', text: w(sag, fine) },
        { label: 'A new bottom of the same wood and size', text: w(after) },
      ],
      question:
        'How far does the new bottom sag under the same load? How far does a tap move it, in percent of what it moves the old one?',
      lines: [
        step(
          ['sag', 'Divide the new thickness by the old one.', `${w(after)} divided by ${w(before)}`],
          'times as thick',
          ratio,
          0.02,
          number,
          [
            slip(
              'upside-down',
              1 / ratio,
              'You divided the old by the new. It gets thicker: the number is above one.',
            ),
          ],
        ),
        ask(
          [
            'sag',
            'Divide the sag by this number three times over.',
            `${w(sag, { ...fine, as: 'exact' })} divided by ${w(ratio, number)}³`,
          ],
          {
            label: 'new sag',
            key,
            within: native(system, 0.025, 0.001),
            print: fine,
            mistakes: [
              slip(
                'linear',
                sag / ratio,
                'You divided once. A bottom bends by its thickness cubed: divide three times over.',
              ),
              slip(
                'square',
                sag / ratio ** 2,
                'You divided twice. That is for the tap; a bottom bends by its thickness cubed.',
              ),
              slip('upside-down', sag * ratio ** 3, 'You multiplied. A thicker bottom sags less: divide.'),
              slip('less', sag - key, 'This is by how much less it sags. Asked for is what is left.'),
            ],
          },
        ),
        ask(['tap', 'Divide 100 % by the number twice over.', `100 % divided by ${w(ratio, number)}²`], {
          label: 'motion of a tap',
          key: motion,
          within: 1.2,
          print: { kind: 'percent', digits: 0 },
          mistakes: [
            slip(
              'linear',
              100 / ratio,
              'You divided once. A tap moves a bottom by its thickness squared: divide twice over.',
            ),
            slip(
              'cube',
              100 / ratio ** 3,
              'You divided three times. That is for the sag; a tap goes with the square.',
            ),
            slip(
              'upside-down',
              100 * ratio ** 2,
              'You multiplied. A tap moves the thicker bottom less: divide.',
            ),
            slip(
              'less',
              100 - motion,
              'This is by how much less it moves. Asked for is what is left of the motion.',
            ),
            slip(
              'pitch',
              100 * ratio,
              'This is the pitch, which rises. Asked for is how far the tap moves it, which falls.',
            ),
          ],
        }),
      ],
    };
  },
});
