/** E2: the outside height of a box with a sliding lid, a stack of five. Source of the relation: geometry. */

import { heightStack } from '../../calc/size/heights.ts';
import { exercise } from '../core/exercise.ts';
import { ask, exactly, inches, size, slip, step, writer } from '../core/make.ts';

export const e2 = exercise({
  id: 'e2',
  title: 'Height is a stack',
  about: 'How high is a box with a sliding lid?',
  lesson: 'start-from-what-goes-in-it',
  rules: ['outside-is-inside-plus-two-walls', 'lip-below-bottom-groove'],
  draw: (from, system) =>
    system === 'mm'
      ? {
          below: from.one([5, 6, 7]),
          bottom: from.one([3, 4, 5, 6]),
          inside: from.step(30, 90, 1),
          lid: from.one([4, 5, 6]),
          above: from.one([4, 5, 6]),
        }
      : {
          below: inches(from.one([3 / 16, 1 / 4, 5 / 16])),
          bottom: inches(from.one([1 / 8, 3 / 16, 1 / 4])),
          inside: inches(from.step(1.25, 3.5, 0.125)),
          lid: inches(from.one([3 / 16, 1 / 4])),
          above: inches(from.one([3 / 16, 1 / 4])),
        },
  pose: ({ below, bottom, inside, lid, above }, system) => {
    const w = writer(system);
    const key = heightStack.compute({ m_b: below, b: bottom, h: inside, d: lid, m_d: above });
    const within = exactly(system);
    const without = (id: string, value: number, part: string) =>
      slip(id, key - value, `The stack lacks ${part}. Go up from the table and count every part.`);
    return {
      given: [
        { label: 'Wood below the bottom’s groove', text: w(below) },
        { label: 'Bottom, at its edge', text: w(bottom) },
        { label: 'Inside height', text: w(inside) },
        { label: 'Lid, at its edge', text: w(lid) },
        { label: 'Wood above the lid’s groove', text: w(above) },
      ],
      question: 'How high are the walls?',
      lines: [
        step(
          [
            'stack',
            'Add what lies below the inside: the wood under the groove, and the bottom.',
            `${w(below)} + ${w(bottom)}`,
          ],
          'below the inside',
          below + bottom,
          within,
          size,
        ),
        step(
          [
            'stack',
            'Add what lies above the inside: the lid, and the wood over its groove.',
            `${w(lid)} + ${w(above)}`,
          ],
          'above the inside',
          lid + above,
          within,
          size,
        ),
        ask(
          [
            'stack',
            'Add the inside height to both.',
            `${w(below + bottom)} + ${w(inside)} + ${w(lid + above)}`,
          ],
          {
            label: 'height of the walls',
            key,
            within,
            print: size,
            mistakes: [
              without('no-above', above, 'the wood above the lid’s groove'),
              without('no-below', below, 'the wood below the bottom’s groove'),
              without('no-lid', lid, 'the lid'),
              without('no-bottom', bottom, 'the bottom'),
              without('no-wood', above + below, 'the wood outside both grooves'),
              without('no-panels', lid + bottom, 'the lid and the bottom'),
              slip(
                'inside-only',
                inside,
                'This is the inside height. Bottom, lid and the wood outside their grooves stand in the walls as well.',
              ),
            ],
          },
        ),
      ],
    };
  },
});
