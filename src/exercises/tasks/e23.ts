/** E23: a rim made flat. Source of the relations: geometry; how much wood must stay is given. */

import { lipAfterRim, rimLoss } from '../../calc/square/rim.ts';
import { exercise } from '../core/exercise.ts';
import { ask, choose, exact, fine, inches, native, size, slip, writer } from '../core/make.ts';

export const e23 = exercise({
  id: 'e23',
  title: 'A rim that rocks',
  about: 'What comes off when the rim is rubbed flat, and is enough left?',
  lesson: 'flat-smooth-and-kind',
  rules: ['sand-the-rim-flat'],
  draw: (from, system) =>
    system === 'mm'
      ? { rock: from.step(0.4, 1.6, 0.1), lip: from.step(3, 6, 0.5), least: from.step(2.5, 5, 0.5) }
      : {
          rock: inches(from.step(0.016, 0.08, 0.004)),
          lip: inches(from.step(1 / 8, 1 / 4, 1 / 32)),
          least: inches(from.step(3 / 32, 7 / 32, 1 / 32)),
        },
  // Asks something: enough wood now, and not at the very edge of enough afterwards.
  fits: ({ rock, lip, least }) =>
    least < lip - 0.1 && least >= lip - 1.7 && Math.abs(lip - rock / 2 - least) > 0.04,
  pose: ({ rock: h, lip: m, least }, system) => {
    const w = writer(system);
    const loss = rimLoss.compute({ h });
    const left = lipAfterRim.compute({ m, h });
    const within = native(system, 0.03, 0.001);
    const verdict = left >= least ? 'rub' : 'leave';
    return {
      given: [
        { label: 'One corner of the rim stands off a flat plate by', text: w(h, fine) },
        { label: 'Wood above the lid’s groove', text: w(m, size) },
        { label: 'Of that you want to keep at least', text: w(least, size) },
      ],
      question:
        'The rim is rubbed flat, held evenly. What comes off at two corners? How much wood is left there above the groove? What do you do?',
      lines: [
        ask(
          ['rim', 'Halve what the corner stands off: two corners share it.', `${w(h, exact)} divided by 2`],
          {
            label: 'off at two corners',
            key: loss,
            within,
            print: fine,
            mistakes: [
              slip(
                'whole',
                h,
                'This is what one corner loses when you press on it. Held evenly, two corners share it: halve it.',
              ),
              slip(
                'quarter',
                h / 4,
                'This is what the middle of a wall loses. The two high corners lose half each.',
              ),
              slip(
                'double',
                2 * h,
                'You doubled it. The flat rim goes through the low corners, and the high ones share the rest: halve it.',
              ),
            ],
          },
        ),
        ask(['rim', 'Take that from the wood above the groove.', `${w(m, exact)} − ${w(loss, exact)}`], {
          label: 'wood left above the groove',
          key: left,
          within,
          print: exact,
          mistakes: [
            slip('whole', m - h, 'You took the whole of it off. Two corners share it: take off half.'),
            slip(
              'quarter',
              m - h / 4,
              'You took off what the middle of a wall loses. The corners lose half.',
            ),
            slip('added', m + loss, 'You added it. The rim comes down towards the groove: subtract.'),
            slip(
              'nothing',
              m,
              'This is the wood before. The groove stays where it is, and the rim comes down to it.',
            ),
          ],
        }),
        choose(['rim', 'Compare what is left with the least you want.', ''], {
          label: 'what you do',
          key: verdict,
          options: [
            {
              id: 'rub',
              text: 'Rub it flat, held evenly',
              says: 'Less would be left than you want to keep. Compare the wood left with the least, not the wood before.',
            },
            {
              id: 'leave',
              text: 'Leave the rim as it is',
              says: 'Enough is left: two corners share what comes off, so each loses only half.',
            },
            {
              id: 'press',
              text: 'Rub it with the weight on one high corner',
              says: 'Pressed down there, that corner loses all of it alone, and its lip gets thinner than it need be.',
            },
          ],
        }),
      ],
    };
  },
});
