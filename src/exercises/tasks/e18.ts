/** E18: what is left behind a groove, and what a thicker lip holds. Source of the relations: beam theory. */

import { web, webStrength } from '../../calc/grooves/groove-web.ts';
import { lipLoad } from '../../calc/grooves/grooves.ts';
import { exercise } from '../core/exercise.ts';
import { ask, exactly, inches, plain, size, slip, step, writer } from '../core/make.ts';

export const e18 = exercise({
  id: 'e18',
  title: 'Web and lip',
  about: 'How much strength does a groove leave, and how much does a thicker lip add?',
  lesson: 'groove-margins',
  rules: ['groove-depth', 'lip-below-bottom-groove'],
  draw: (from, system) =>
    system === 'mm'
      ? {
          wall: from.step(8, 14, 1),
          depth: from.step(2, 6, 0.5),
          lip: from.one([3, 4, 5, 6]),
          thicker: from.one([5, 6, 7, 8, 9]),
        }
      : {
          wall: inches(from.step(5 / 16, 9 / 16, 1 / 16)),
          depth: inches(from.step(3 / 32, 1 / 4, 1 / 32)),
          lip: inches(from.one([1 / 8, 3 / 16, 1 / 4])),
          thicker: inches(from.one([3 / 16, 1 / 4, 5 / 16, 3 / 8])),
        },
  // A groove of a fifth to a half of the wall; a lip that is clearly thicker, and not three times as thick.
  fits: ({ wall, depth, lip, thicker }) =>
    depth >= wall / 5 && depth <= wall / 2 + 1e-6 && thicker > 1.15 * lip && thicker < 2.6 * lip,
  pose: ({ wall: t, depth: g, lip, thicker }, system) => {
    const w = writer(system);
    const left = web.compute({ t, g });
    const strength = webStrength.compute({ w: left, t });
    // Of the same wood and the same groove, so strength and arm are the same and cancel.
    const holds = (m: number) => lipLoad.compute({ sigma_t: 1, m, d: 1 });
    const times = holds(thicker) / holds(lip);
    const ratio = thicker / lip;
    return {
      given: [
        { label: 'Walls', text: w(t) },
        { label: 'Depth of the groove', text: w(g) },
        { label: 'Lip below the groove', text: w(lip) },
        { label: 'A thicker lip', text: w(thicker) },
      ],
      question:
        'What share of the wall’s bending strength is left behind the groove? How many times as much does the thicker lip bear?',
      lines: [
        step(
          ['web', 'Take the depth of the groove from the wall.', `${w(t)} − ${w(g)}`],
          'wood left behind the groove',
          left,
          exactly(system),
          size,
          [slip('groove', g, 'This is what the groove takes. What is left behind it is the wall less that.')],
        ),
        ask(['web', 'Divide what is left by the wall, and square it.', `(${w(left)} divided by ${w(t)})²`], {
          label: 'strength left',
          key: strength,
          within: 1,
          print: { kind: 'percent', digits: 0 },
          mistakes: [
            slip(
              'linear',
              (100 * left) / t,
              'This is the share of the thickness. Strength goes with its square: multiply the share by itself.',
            ),
            slip(
              'cube',
              100 * (left / t) ** 3,
              'You took the cube, which is for stiffness. Strength goes with the square.',
            ),
            slip(
              'groove',
              100 * (g / t) ** 2,
              'You took the depth of the groove. What is left behind it carries: the wall less the depth.',
            ),
            slip('lost', 100 - strength, 'This is what is lost. Asked for is what is left.'),
          ],
        }),
        ask(
          [
            'lip',
            'Divide the thicker lip by the thinner, and square it.',
            `(${w(thicker)} divided by ${w(lip)})²`,
          ],
          {
            label: 'times as much',
            key: times,
            within: times / 40,
            print: { ...plain, digits: 2 },
            mistakes: [
              slip(
                'linear',
                ratio,
                'This is how much thicker it is. A lip that bends holds with its thickness squared.',
              ),
              slip(
                'cube',
                ratio ** 3,
                'You took the cube, which is for stiffness. A lip splits by its strength: the square.',
              ),
              slip(
                'upside-down',
                1 / times,
                'You divided the thinner by the thicker. The thicker lip bears more: the number is above one.',
              ),
              slip(
                'difference',
                times - 1,
                'This is how much more it bears. Asked for is how many times as much.',
              ),
            ],
          },
        ),
      ],
    };
  },
});
