/** E13: the ratio inside is not the ratio outside. Source of the relations: geometry. */

import { lengthForInsideRatio } from '../../calc/proportion/inside-ratio.ts';
import { longToShort } from '../../calc/proportion/proportion.ts';
import { insideFromOutside } from '../../calc/size/sizes.ts';
import { exercise } from '../core/exercise.ts';
import { ask, inches, native, size, slip, step, writer } from '../core/make.ts';

export const e13 = exercise({
  id: 'e13',
  title: 'A ratio inside',
  about: 'How long is a box whose inside has a simple ratio, and what ratio has its outside?',
  lesson: 'proportion',
  rules: ['inside-and-outside-differ', 'simple-ratio'],
  draw: (from, system) => {
    const [long, short] = from.one([
      [4, 3],
      [3, 2],
      [5, 3],
      [2, 1],
    ] as const);
    return system === 'mm'
      ? { long, short, width: from.step(80, 180, 5), wall: from.one([6, 8, 10, 12]) }
      : {
          long,
          short,
          width: inches(from.step(3, 7, 0.25)),
          wall: inches(from.one([1 / 4, 5 / 16, 3 / 8, 1 / 2])),
        };
  },
  pose: ({ long, short, width, wall }, system) => {
    const w = writer(system);
    const r = long / short;
    const across = insideFromOutside.compute({ L: width, t: wall });
    const along = r * across;
    const length = lengthForInsideRatio.compute({ r_in: r, W: width, t: wall });
    const outside = longToShort.compute({ L: length, W: width });
    // Half of 1/32 in, so that the nearest mark of a rule is right.
    const near = native(system, 0.3, 1 / 64);
    return {
      given: [
        { label: 'Outside width', text: w(width) },
        { label: 'Walls', text: w(wall) },
        { label: 'Ratio wanted inside, length to width', text: `${long} to ${short}` },
      ],
      question: 'How long must the box be outside? What is the ratio of its outside then?',
      lines: [
        step(
          ['insideRatio', 'Take two walls from the outside width.', `${w(width)} − 2 × ${w(wall)}`],
          'inside width',
          across,
          near,
          size,
          [slip('one-wall', width - wall, 'You took one wall. There is one on each side: take two.')],
        ),
        step(
          [
            'ratio',
            'Multiply the inside width by the ratio.',
            short === 1 ? `${w(across)} × ${long}` : `${w(across)} × ${long}, divided by ${short}`,
          ],
          'inside length',
          along,
          near,
          size,
        ),
        ask(['insideRatio', 'Add two walls.', `${w(along)} + 2 × ${w(wall)}`], {
          label: 'outside length',
          key: length,
          within: near,
          print: size,
          mistakes: [
            slip(
              'outside-ratio',
              r * width,
              'You gave the outside this ratio. The inside would be longer than wanted: take two walls from the width first.',
            ),
            slip('no-walls', along, 'This is the length inside. Add a wall at each end.'),
            slip('one-wall', along + wall, 'You added one wall. There is one at each end: add two.'),
            slip(
              'upside-down',
              across / r + 2 * wall,
              'You divided by the ratio. The length is the longer side: multiply.',
            ),
          ],
        }),
        ask(
          ['ratio', 'Divide the outside length by the outside width.', `${w(length)} divided by ${w(width)}`],
          {
            label: 'ratio outside',
            key: outside,
            within: 0.01,
            print: { kind: 'number', digits: 2 },
            mistakes: [
              slip(
                'inside',
                r,
                'This is the ratio inside. Outside both sides have two walls more, so the ratio is another: divide the outside sizes.',
              ),
              slip(
                'upside-down',
                1 / outside,
                'You divided the width by the length. Divide the longer by the shorter.',
              ),
              slip(
                'one-wall',
                (along + wall) / (across + wall),
                'You divided sizes with one wall. Outside there are two on each side.',
              ),
            ],
          },
        ),
      ],
    };
  },
});
