/** E14: what the walls cost, and whether they are usual. Geometry; from 1/30 to 1/20 of the longest side: common practice. */

import { insideFromOutside } from '../../calc/size/sizes.ts';
import { shareNotInside } from '../../calc/walls/walls.ts';
import { exercise } from '../core/exercise.ts';
import { ask, choose, exactly, inches, size, slip, step, writer } from '../core/make.ts';

/** Walls in the longest side: a thick usual one and a thin one. */
const [thick, thin] = [20, 30];

export const e14 = exercise({
  id: 'e14',
  title: 'What walls cost',
  about: 'How much of the outside is not inside, and is the wall usual?',
  lesson: 'wall-thickness',
  rules: ['walls-cost-inside-volume', 'wall-thickness'],
  draw: (from, system) =>
    system === 'mm'
      ? {
          length: from.step(140, 300, 10),
          width: from.step(80, 180, 10),
          height: from.step(60, 100, 5),
          inside: from.step(35, 85, 5),
          wall: from.one([6, 8, 10, 12]),
        }
      : {
          length: inches(from.step(5.5, 12, 0.5)),
          width: inches(from.step(3, 7, 0.5)),
          height: inches(from.step(2.25, 4, 0.25)),
          inside: inches(from.step(1.25, 3.5, 0.25)),
          wall: inches(from.one([1 / 4, 5 / 16, 3 / 8, 1 / 2])),
        },
  // Bottom and lid take 10 to 25 mm of the height; and the wall is not at the very edge of what is usual.
  fits: ({ length, width, height, inside, wall }) => {
    const walls = length / wall;
    return (
      length >= width &&
      height - inside >= 10 &&
      height - inside <= 26 &&
      Math.abs(walls - thick) > 0.4 &&
      Math.abs(walls - thin) > 0.4
    );
  },
  pose: ({ length: L, width: W, height: H, inside: h, wall: t }, system) => {
    const w = writer(system);
    const within = exactly(system);
    const [l, b] = [insideFromOutside.compute({ L, t }), insideFromOutside.compute({ L: W, t })];
    const lost = (l: number, w: number, h: number) => shareNotInside.compute({ l, w, h, L, W, H });
    const walls = L / t;
    const verdict = walls < thick ? 'thick' : walls > thin ? 'thin' : 'usual';
    const limits = `A twentieth of the longest side is ${w(L / thick)}, a thirtieth ${w(L / thin)}`;
    return {
      given: [
        { label: 'Outside length', text: w(L) },
        { label: 'Outside width', text: w(W) },
        { label: 'Outside height', text: w(H) },
        { label: 'Inside height', text: w(h) },
        { label: 'Walls', text: w(t) },
      ],
      question:
        'What share of the outside volume is not inside? Is the wall thin, usual or thick for this box?',
      lines: [
        step(
          ['twoWalls', 'Take two walls from the outside length.', `${w(L)} − 2 × ${w(t)}`],
          'inside length',
          l,
          within,
          size,
          [slip('one-wall', L - t, 'You took one wall. There is one at each end: take two.')],
        ),
        step(
          ['twoWalls', 'Take two walls from the outside width.', `${w(W)} − 2 × ${w(t)}`],
          'inside width',
          b,
          within,
          size,
          [slip('one-wall', W - t, 'You took one wall. There is one on each side: take two.')],
        ),
        ask(
          [
            'volumeLost',
            'Divide the inside volume by the outside volume, and take the share from the whole.',
            `1 − (${w(l)} × ${w(b)} × ${w(h)}) divided by (${w(L)} × ${w(W)} × ${w(H)})`,
          ],
          {
            label: 'share that is not inside',
            key: lost(l, b, h),
            within: 0.6,
            print: { kind: 'percent', digits: 0 },
            mistakes: [
              slip(
                'inside-share',
                100 - lost(l, b, h),
                'This is the share that is inside. Take it from the whole, 100 %.',
              ),
              slip(
                'one-wall',
                lost(L - t, W - t, h),
                'You took one wall from each side. Each side loses two.',
              ),
              slip('floor-only', lost(l, b, H), 'You left out the height. Bottom and lid take room as well.'),
              slip('height-only', lost(L, W, h), 'You left out the walls. Length and width lose two each.'),
            ],
          },
        ),
        choose(['usualWall', 'Compare the wall with a twentieth and a thirtieth of the longest side.', ''], {
          label: 'the wall is',
          key: verdict,
          options: [
            {
              id: 'thin',
              text: 'Thinner than usual',
              says: `${limits}: the wall is no thinner than that.`,
            },
            {
              id: 'usual',
              text: 'Usual: from a thirtieth to a twentieth',
              says: `${limits}: the wall does not lie between.`,
            },
            {
              id: 'thick',
              text: 'Thicker than usual',
              says: `${limits}: the wall is no thicker than that.`,
            },
          ],
        }),
      ],
    };
  },
});
