/** What the drawings show of the solids, against light rays and plain areas. */
import { describe, expect, test } from 'vitest';
import { type Design, designBox } from '../../../src/box/design/design.ts';
import { isometric, shownParts } from '../../../src/figures/box/from-design.ts';
import type { Polygon, Vector } from '../../../src/geometry/convex.ts';
import { inSolid } from '../../../src/geometry/solid.ts';
import type { View } from '../../../src/geometry/view.ts';
import { visible } from '../../../src/geometry/visible.ts';
import { exampleBox } from '../../box/reckoned-box.ts';

const kinds = ['sliding', 'lift-off', 'sawn'] as const;
const joints = ['finger', 'dovetail', 'mitre', 'keyed-mitre', 'splined-mitre', 'rabbet', 'butt'] as const;

/** Signed area on the sheet by the shoelace formula. */
const areaOf = ({ points }: Polygon) =>
  Math.abs(
    points.reduce((sum, [x, y], index) => {
      const [nextX, nextY] = points[(index + 1) % points.length]!;
      return sum + (x * nextY - y * nextX) / 2;
    }, 0),
  );

const areaSeen = (view: View, design: Design) =>
  visible(view, shownParts(design))
    .flatMap(({ polygons }) => polygons)
    .reduce((sum, polygon) => sum + areaOf(polygon), 0);

const views = {
  front: { right: [0, -1, 0], up: [0, 0, 1], into: [1, 0, 0] },
  left: { right: [1, 0, 0], up: [0, 0, 1], into: [0, 1, 0] },
  above: { right: [1, 0, 0], up: [0, 1, 0], into: [0, 0, -1] },
} as const satisfies Record<string, View>;

/** A place on the sheet at a depth, back in the box. */
const inBox = ({ right, up, into }: View, [x, y, depth]: Vector) => {
  const [px, py, pz] = [0, 1, 2].map((axis) => x * right[axis]! - y * up[axis]! + depth * into[axis]!);
  return { x: px!, y: py!, z: pz! };
};

describe.each(kinds)('a closed box of kind %s', (kind) => {
  describe.each(joints)('with corners of kind %s', (joint) => {
    const design = designBox({ ...exampleBox, kind, joint });
    const { outsideLength: L, outsideWidth: W, outsideHeight: H } = design.values;

    test('is seen once all over its front, its side and its top', () => {
      // Gaps as fine as a finger's fit are not drawn; through the lid's own gap one sees the groove behind it.
      for (const [view, area] of [
        [views.front, W * H],
        [views.left, L * H],
        [views.above, L * W],
      ] as const) {
        expect(areaSeen(view, design) / area).toBeGreaterThan(0.995);
        expect(areaSeen(view, design) / area).toBeLessThan(1.00001);
      }
    });

    test('shows at each place what a ray of light from the eye meets first', () => {
      const pieces = design.parts.flatMap((part) => part.pieces.map((piece) => ({ part, piece })));
      const woodAt = (place: Vector) =>
        pieces.find(({ piece }) => inSolid(piece, inBox(isometric, place)))?.part.name;
      let looked = 0;
      for (const { name, polygons } of visible(isometric, shownParts(design)))
        for (const polygon of polygons) {
          const { points } = polygon;
          // Gaps narrower than this hold no place that is safely inside.
          if (areaOf(polygon) < 4) continue;
          const middle = [0, 1, 2].map(
            (axis) => points.reduce((sum, point) => sum + point[axis]!, 0) / points.length,
          ) as unknown as Vector;
          const deeper = (by: number): Vector => [middle[0], middle[1], middle[2] + by];
          expect(woodAt(deeper(0.05)), `behind a face of ${name.name}`).toBe(name.name);
          for (let before = 0.05; before < 300; before += 0.45)
            expect(woodAt(deeper(-before)), `${before} mm before a face of ${name.name}`).toBeUndefined();
          looked++;
        }
      expect(looked).toBeGreaterThan(8);
    });
  });
});
