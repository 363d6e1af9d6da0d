/** Ways to lay the things that go into a box, and the box around each. */

import { compute, modelOf } from '../subjects/model.ts';
import { size } from '../subjects/size/subject.ts';
import type { Values } from '../whole/index.ts';

interface Way {
  /** Sizes of a thing as it lies (length, width, height of the first in the list), and how many lie along each. */
  readonly turned: readonly [
    'length' | 'width' | 'height',
    'length' | 'width' | 'height',
    'length' | 'width' | 'height',
  ];
  readonly places: readonly [number, number, number];
}

/** Each holds the 28 of a set, with no more than two places empty. */
export const lyings: Readonly<Record<string, Way>> = {
  flat: { turned: ['width', 'length', 'height'], places: [7, 2, 2] },
  edge: { turned: ['length', 'height', 'width'], places: [3, 10, 1] },
  end: { turned: ['width', 'height', 'length'], places: [4, 7, 1] },
};

const { results } = modelOf(size);

/** The box around things that lie so. */
export function boxAround(v: Values, option: string): Values {
  const { turned, places } = lyings[option]!;
  const thing = v.items[0]!;
  const along = (axis: 0 | 1 | 2) => places[axis] * thing[turned[axis]];
  return compute(results, {
    ...v,
    sizeFrom: 'contents',
    contentsLength: along(0),
    contentsWidth: along(1),
    contentsHeight: along(2),
  });
}

/** Room the box takes up outside, mm³. */
export const bulkOf = (v: Values, option: string): number => {
  const box = boxAround(v, option);
  return box.outsideLength * box.outsideWidth * box.outsideHeight;
};

/** The way that makes the smallest box. */
export const leastBulk = (v: Values): string =>
  Object.keys(lyings).reduce((least, one) => (bulkOf(v, one) < bulkOf(v, least) ? one : least));
