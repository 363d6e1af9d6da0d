/** The names round the drawing never lie on one another, whatever they name. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelPlaces } from '../../../src/figures/box/label-places.ts';
import { type PartOfBox, partsOfBox } from '../../../src/figures/box/parts-of-box.ts';
import type { Spot } from '../../../src/figures/box/spots.ts';

const place = fc.tuple(
  fc.double({ min: 0, max: 800, noNaN: true }),
  fc.double({ min: 0, max: 400, noNaN: true }),
);
const spots = fc
  .tuple(...partsOfBox.map(() => place))
  .map(
    (at) =>
      Object.fromEntries<Spot>(partsOfBox.map((part, i) => [part, { at: at[i]!, hidden: false }])) as Record<
        PartOfBox,
        Spot
      >,
  );

test('names stand at both sides, in the order of what they name, within the plate and clear of each other', () => {
  fc.assert(
    fc.property(spots, fc.integer({ min: 230, max: 640 }), (of, height) => {
      const places = labelPlaces(of, height);
      expect(places.map(({ part }) => part).sort()).toEqual([...partsOfBox].sort());
      for (const side of ['left', 'right'] as const) {
        const column = places.filter((one) => one.side === side);
        expect(column).toHaveLength(3);
        column.forEach(({ top, spot }, index) => {
          expect(top).toBeGreaterThanOrEqual(0);
          // A name, its size and a count are three lines.
          expect(top + 60).toBeLessThanOrEqual(height);
          const next = column[index + 1];
          if (next) {
            expect(next.top - top).toBeGreaterThanOrEqual(60);
            expect(next.spot[1]).toBeGreaterThanOrEqual(spot[1]);
          }
        });
      }
      const left = places.filter(({ side }) => side === 'left').map(({ spot }) => spot[0]);
      const right = places.filter(({ side }) => side === 'right').map(({ spot }) => spot[0]);
      expect(Math.max(...left)).toBeLessThanOrEqual(Math.min(...right));
    }),
  );
});
