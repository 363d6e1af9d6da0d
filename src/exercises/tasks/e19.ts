/** E19: what the errors of a jig come to at the far edge. Source of the relations: geometry. */

import { fingerCount, heightFromFingers } from '../../calc/joints/finger-layout.ts';
import { addedStepError, stepsAlong } from '../../calc/joints/joint-fit.ts';
import { exercise } from '../core/exercise.ts';
import { ask, count, exact, inches, native, slip, step, writer } from '../core/make.ts';

export const e19 = exercise({
  id: 'e19',
  title: 'Steps that add up',
  about: 'How far off is the last slot, when every step is off the same way?',
  lesson: 'turn-it-round',
  rules: ['turn-the-part-round', 'step-error-adds-up'],
  draw: (from, system) => ({
    fingers: from.step(7, 19, 2),
    finger: system === 'mm' ? from.one([4, 5, 6, 8, 10]) : inches(from.one([3 / 16, 1 / 4, 5 / 16, 3 / 8])),
    error: system === 'mm' ? from.step(0.02, 0.08, 0.01) : inches(from.step(0.001, 0.004, 0.001)),
  }),
  // Heights of small boxes.
  fits: ({ fingers, finger }) => fingers * finger >= 40 && fingers * finger <= 110,
  pose: ({ fingers, finger, error }, system) => {
    const w = writer(system);
    const H = heightFromFingers.compute({ n: fingers, f: finger });
    const n = Math.round(fingerCount.compute({ H, f: finger }));
    const i = stepsAlong.compute({ n });
    const off = (steps: number) => addedStepError.compute({ i: steps, delta: error });
    return {
      given: [
        { label: 'Height of the walls', text: w(H) },
        { label: 'Finger width', text: w(finger) },
        { label: 'Each step of the jig is too long by', text: w(error, exact) },
      ],
      question: 'All slots are cut from one edge. What do the steps come to at the far edge?',
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
          [slip('one-wall', (n + 1) / 2, 'You counted the fingers of one wall. Count those of both.')],
        ),
        ask(
          [
            'oneEdge',
            'A step is a slot and a finger together: half of the fingers, rounded down.',
            `(${n} − 1) divided by 2`,
          ],
          {
            label: 'steps',
            key: i,
            within: 0,
            print: count,
            mistakes: [
              slip(
                'fingers',
                n,
                'These are the fingers of both walls. One step takes the work on by a slot and a finger: two of them.',
              ),
              slip(
                'gaps',
                n - 1,
                'You counted every line between fingers. One step takes the work on by two of them.',
              ),
              slip(
                'rounded-up',
                i + 1,
                'These are the fingers of one wall. Between them lies one step fewer.',
              ),
            ],
          },
        ),
        ask(['oneEdge', 'Multiply the error of a step by the steps.', `${i} × ${w(error, exact)}`], {
          label: 'off at the far edge',
          key: off(i),
          within: native(system, 0.006, 0.0005),
          print: exact,
          mistakes: [
            slip(
              'fingers',
              off(n),
              'You multiplied by the fingers. A step is a slot and a finger together, so there are half as many.',
            ),
            slip(
              'gaps',
              off(n - 1),
              'You counted every line between fingers. One step takes the work on by two of them.',
            ),
            slip(
              'one-step',
              error,
              'This is one step. Each begins where the last one ended, so they add up.',
            ),
            slip(
              'rounded-up',
              off(i + 1),
              'You took one step too many: the first slot stands where the edge puts it, before any step.',
            ),
            slip(
              'by-chance',
              error * Math.sqrt(i),
              'You took the root of the steps. That is for errors that fall either way by chance; these all go one way.',
            ),
          ],
        }),
      ],
    };
  },
});
