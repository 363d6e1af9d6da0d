/** E3: the nearest odd number of fingers, and the height that it fills. Source of the relations: geometry. */

import { fingerCount, heightFromFingers, nearestOddCount } from '../../calc/joints/finger-layout.ts';
import { exercise } from '../core/exercise.ts';
import { ask, count, exactly, inches, plain, size, slip, step, writer } from '../core/make.ts';

export const e3 = exercise({
  id: 'e3',
  title: 'An odd number of fingers',
  about: 'How many fingers, and how high is the box then?',
  lesson: 'joint-spacing',
  rules: ['odd-finger-count', 'no-sliver-at-the-edge'],
  draw: (from, system) =>
    system === 'mm'
      ? { height: from.step(40, 110, 1), finger: from.one([5, 6, 8, 10]) }
      : {
          height: inches(from.step(1.5, 4.5, 0.125)),
          finger: inches(from.one([3 / 16, 1 / 4, 5 / 16, 3 / 8])),
        },
  fits: ({ height, finger }) => {
    const exactCount = fingerCount.compute({ H: height, f: finger });
    const odd = nearestOddCount.compute({ H: height, f: finger });
    // Neither odd already, nor half way between two odd numbers, nor a corner that nobody would cut.
    const off = Math.abs(exactCount - odd);
    return odd >= 5 && odd <= 15 && off > 0.05 && off < 0.95;
  },
  pose: ({ height, finger }, system) => {
    const w = writer(system);
    const of = { H: height, f: finger };
    const exactCount = fingerCount.compute(of);
    const odd = nearestOddCount.compute(of);
    const heightOf = (n: number) => heightFromFingers.compute({ n, f: finger });
    const whole = Math.round(exactCount);
    const farther = exactCount > odd ? odd + 2 : odd - 2;
    return {
      given: [
        { label: 'Height wanted', text: w(height) },
        { label: 'Finger width', text: w(finger) },
      ],
      question:
        'Which odd number of fingers is nearest, both walls counted together, and how high must the walls be for it?',
      lines: [
        step(
          ['fingerCount', 'Divide the height by the finger width.', `${w(height)} divided by ${w(finger)}`],
          'fingers that would go in',
          exactCount,
          0.06,
          { ...plain, digits: 2 },
        ),
        ask(['oddCount', 'Take the odd number nearest to that.', ''], {
          label: 'number of fingers',
          key: odd,
          within: 0,
          print: count,
          mistakes: [
            slip(
              'even',
              whole % 2 === 0 ? whole : odd + (exactCount > odd ? 1 : -1),
              'This number is even: one edge would end with a finger, the other with a slot. Take the nearest odd one.',
            ),
            slip(
              'farther',
              farther,
              'This number is odd, but the one on the other side is nearer: compare both.',
            ),
            slip(
              'one-wall',
              (odd + 1) / 2,
              'You counted the fingers of one wall. Those of its neighbor fill the slots between them: count both.',
            ),
            slip(
              'slots',
              (odd - 1) / 2,
              'You counted the slots of one wall. Its own fingers and those of the neighbor together fill the height.',
            ),
          ],
        }),
        ask(['wholeHeight', 'Multiply this number by the finger width.', `${odd} × ${w(finger)}`], {
          label: 'height of the walls',
          key: heightOf(odd),
          within: exactly(system),
          print: size,
          mistakes: [
            slip(
              'not-changed',
              height,
              'This is the height you began with. It leaves part of a finger at the edge: make it as high as whole fingers.',
            ),
            slip(
              'even',
              heightOf(whole % 2 === 0 ? whole : odd + (exactCount > odd ? 1 : -1)),
              'This height has an even number of fingers. Multiply the odd number by the finger width.',
            ),
            slip('farther', heightOf(farther), 'This height has the odd number that is farther away.'),
            slip(
              'slots',
              heightOf((odd - 1) / 2),
              'You multiplied the slots of one wall. All fingers of both walls stack up to the height.',
            ),
          ],
        }),
      ],
    };
  },
});
