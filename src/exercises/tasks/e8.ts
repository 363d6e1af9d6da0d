/** E8: what a difference of the diagonals means. Relation: geometry; the limits of 0.5 and 1 mm, 1/64 and 1/32 in: common practice. */

import { endShift } from '../../calc/square/diagonals.ts';
import { exercise } from '../core/exercise.ts';
import { ask, choose, exact, fine, inches, native, size, slip, step, writer } from '../core/make.ts';

export const e8 = exercise({
  id: 'e8',
  title: 'Unequal diagonals',
  about: 'How far does the box lean, and is that good enough?',
  lesson: 'is-it-square',
  rules: ['diagonals'],
  draw: (from, system) =>
    system === 'mm'
      ? { length: from.step(150, 400, 10), width: from.step(80, 250, 10), difference: from.step(0.5, 3, 0.5) }
      : {
          length: inches(from.step(6, 16, 0.5)),
          width: inches(from.step(3, 10, 0.5)),
          difference: inches(from.step(1, 8, 1) / 64),
        },
  fits: ({ length, width }) => length >= width && length <= 4 * width,
  pose: ({ length, width, difference }, system) => {
    const w = writer(system);
    const [a, b, D] = [length, width, difference];
    const diagonal = Math.hypot(a, b);
    const [aim, limit] = [native(system, 0.5, 1 / 64), native(system, 1, 1 / 32)];
    const still = 1e-9;
    const verdict = D <= aim + still ? 'good' : D <= limit + still ? 'accepted' : 'correct';
    const tooGood =
      'Compare the difference of the diagonals with both limits, not the shift: it is more than this one allows.';
    const tooStrict =
      'Compare the difference of the diagonals with both limits: it is no more than a better one allows.';
    return {
      given: [
        { label: 'Inside length', text: w(a) },
        { label: 'Inside width', text: w(b) },
        { label: 'The diagonals differ by', text: w(D) },
        { label: 'Aim and limit for that difference', text: `${w(aim)}, ${w(limit)}` },
      ],
      question: 'How far does one end stand aside, and what do you do?',
      lines: [
        step(
          [
            'diagonals',
            'Find the diagonal of the box: the root of both sides squared.',
            `√((${w(a)})² + (${w(b)})²)`,
          ],
          'diagonal',
          diagonal,
          native(system, 0.6, 1 / 32),
          size,
        ),
        ask(
          [
            'diagonals',
            'Multiply the difference by the diagonal, and divide by twice the length.',
            `${w(D)} × ${w(diagonal)}, divided by 2 × ${w(a)}`,
          ],
          {
            label: 'shift of the end',
            key: endShift.compute({ a, b, D }),
            within: native(system, 0.05, 0.002),
            print: system === 'mm' ? exact : fine,
            mistakes: [
              slip(
                'whole',
                (D * diagonal) / a,
                'This is twice the shift. One diagonal grows while the other shrinks, so divide by twice the length.',
              ),
              slip(
                'difference',
                D,
                'This is the difference of the diagonals. The end moves by less: multiply by the diagonal and divide by twice the length.',
              ),
              slip(
                'half',
                D / 2,
                'You halved the difference. The shape counts as well: multiply by the diagonal and divide by twice the length.',
              ),
              slip(
                'other-side',
                (D * diagonal) / (2 * b),
                'You divided by the width. The end slides along its own width, so the length is what you divide by.',
              ),
            ],
          },
        ),
        choose(['squareEnough', 'Compare the difference of the diagonals with aim and limit.', ''], {
          label: 'what you do',
          key: verdict,
          options: [
            { id: 'good', text: 'Leave it: within the aim', says: tooGood },
            {
              id: 'accepted',
              text: 'Accept it: over the aim, within the limit',
              says: verdict === 'good' ? tooStrict : tooGood,
            },
            { id: 'correct', text: 'Squeeze the long diagonal while the glue is wet', says: tooStrict },
          ],
        }),
      ],
    };
  },
});
