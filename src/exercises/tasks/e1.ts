/** E1: outside length and width from the inside. Source of the relation: geometry. */

import { outsideFromInside } from '../../calc/size/sizes.ts';
import { exercise } from '../core/exercise.ts';
import { ask, exactly, inches, size, slip, writer } from '../core/make.ts';

export const e1 = exercise({
  id: 'e1',
  title: 'Outside from inside',
  about: 'How long and wide is the box outside?',
  lesson: 'start-from-what-goes-in-it',
  rules: ['outside-is-inside-plus-two-walls'],
  draw: (from, system) =>
    system === 'mm'
      ? { length: from.step(140, 300, 5), width: from.step(70, 180, 5), wall: from.one([6, 8, 10, 12]) }
      : {
          length: inches(from.step(5.5, 12, 0.25)),
          width: inches(from.step(2.75, 7, 0.25)),
          wall: inches(from.one([1 / 4, 5 / 16, 3 / 8, 1 / 2])),
        },
  // A length that is longer than the width, to be seen.
  fits: ({ length, width }) => length >= width + 20,
  pose: ({ length, width, wall }, system) => {
    const w = writer(system);
    const line = (name: string, l: number) =>
      ask(['twoWalls', `Add one wall at each end of the inside ${name}.`, `${w(l)} + 2 × ${w(wall)}`], {
        label: `outside ${name}`,
        key: outsideFromInside.compute({ l, t: wall }),
        within: exactly(system),
        print: size,
        mistakes: [
          slip('one-wall', l + wall, 'You added one wall. There is one at each end: add the second.'),
          slip(
            'walls-taken-off',
            l - 2 * wall,
            'You took the walls off. The number given is the inside; outside, the walls come on top.',
          ),
          slip('no-wall', l, 'This is the inside. Outside, both walls come on top.'),
          slip(
            'four-walls',
            l + 4 * wall,
            'You added four walls. The box has four, but a line along its length meets only two of them.',
          ),
        ],
      });
    return {
      given: [
        { label: 'Inside length', text: w(length) },
        { label: 'Inside width', text: w(width) },
        { label: 'Walls', text: w(wall) },
      ],
      question: 'How long and how wide is the box outside?',
      lines: [line('length', length), line('width', width)],
    };
  },
});
