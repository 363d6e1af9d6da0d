/** The box on the bench from any side, in any pose, against rays of light, plain areas and the views of all other drawings. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import { outward } from '../../../src/box/design/part.ts';
import { type BenchPicture, benchPicture } from '../../../src/figures/box/bench-picture.ts';
import { isometric, shownParts } from '../../../src/figures/box/from-design.ts';
import { partAt } from '../../../src/figures/box/hit.ts';
import { type PartOfBox, partsOfBox, wallOf } from '../../../src/figures/box/parts-of-box.ts';
import { poses } from '../../../src/figures/box/poses.ts';
import { sideOfBox } from '../../../src/figures/box/side-of-box.ts';
import type { Polygon } from '../../../src/geometry/convex.ts';
import { visible } from '../../../src/geometry/visible.ts';
import { exampleBox } from '../../box/reckoned-box.ts';
import { firstMet } from '../../reference/first-met.ts';

const kinds = ['sliding', 'lift-off', 'sawn'] as const;
const joints = ['finger', 'dovetail', 'mitre', 'keyed-mitre', 'splined-mitre', 'rabbet', 'butt'] as const;
const anyPose = fc.constantFrom(...poses);
/** All round, and from 30° below the table to 75° above it. */
const anyTurn = fc.integer({ min: -1800, max: 1800 }).map((tenths) => tenths / 10);
const anyTip = fc.integer({ min: -650, max: 390 }).map((tenths) => tenths / 10);
/** Of the sheet; its outer parts are empty at most turns. */
const share = fc.integer({ min: 100, max: 900 }).map((thousandths) => thousandths / 1000);

type Place = readonly [number, number];

/** How far inside an outline a place lies; negative outside. By the lines through its edges. */
function within({ points }: Polygon, [x, y]: Place): number {
  const twice = points.reduce((sum, [a, b], index) => {
    const [c, d] = points[(index + 1) % points.length]!;
    return sum + a * d - c * b;
  }, 0);
  const depths = points.map(([a, b], index) => {
    const [c, d] = points[(index + 1) % points.length]!;
    const long = Math.hypot(c - a, d - b);
    return long < 1e-9 ? Infinity : (Math.sign(twice) * ((c - a) * (y - b) - (d - b) * (x - a))) / long;
  });
  return Math.min(...depths);
}

/** Depth of a flat outline at a place. */
function depthAt({ points }: Polygon, [x, y]: Place): number {
  const [a] = points as [Polygon['points'][number]];
  let [most, found] = [0, Number.NaN];
  for (let index = 1; index < points.length - 1; index++) {
    const [b, c] = [points[index]!, points[index + 1]!];
    const [u, v] = [b.map((value, axis) => value - a[axis]!), c.map((value, axis) => value - a[axis]!)];
    const n = [u[1]! * v[2]! - u[2]! * v[1]!, u[2]! * v[0]! - u[0]! * v[2]!, u[0]! * v[1]! - u[1]! * v[0]!];
    if (Math.abs(n[2]!) <= most) continue;
    most = Math.abs(n[2]!);
    found = a[2] - (n[0]! * (x - a[0]) + n[1]! * (y - a[1])) / n[2]!;
  }
  return found;
}

/** A place where rays all around meet the same thing: clear of edges and of gaps as fine as a finger's fit. */
function clearPlace({ shown, view }: BenchPicture, [x, y]: Place) {
  const met = firstMet(shown, view, [x, y]);
  for (let turn = 0; turn < 8; turn++) {
    const [dx, dy] = [0.2 * Math.cos((turn * Math.PI) / 4), 0.2 * Math.sin((turn * Math.PI) / 4)];
    const near = firstMet(shown, view, [x + dx, y + dy]);
    if (near?.thing !== met?.thing) return undefined;
    if (met && near && Math.abs(near.depth - met.depth) > 4) return undefined;
  }
  return { met };
}

describe.each(kinds)('a box of kind %s', (kind) => {
  test.each(joints)(
    'with corners of kind %s shows from any side what a ray from the eye meets first, once',
    (joint) => {
      const design = designBox({ ...exampleBox, kind, joint });
      let [looked, onWood] = [0, 0];
      fc.assert(
        fc.property(
          anyPose,
          anyTurn,
          anyTip,
          fc.array(fc.tuple(share, share), { minLength: 12, maxLength: 12 }),
          (pose, turn, tip, places) => {
            const picture = benchPicture(design, pose, turn, tip);
            const [left, top, wide, high] = picture.sheet;
            for (const [across, down] of places) {
              const place: Place = [left + across * wide, top + down * high];
              const clear = clearPlace(picture, place);
              if (!clear) continue;
              const here = picture.seen.flatMap(({ of, polygons }) =>
                polygons.map((polygon) => ({ of, polygon, in: within(polygon, place) })),
              );
              if (here.some((one) => Math.abs(one.in) < 1e-4)) continue;
              const drawn = here.filter((one) => one.in > 0);
              looked++;
              expect(drawn.length, `faces drawn at ${place}`).toBe(clear.met ? 1 : 0);
              if (!clear.met) continue;
              onWood++;
              expect(drawn[0]!.of).toBe(clear.met.thing);
              expect(Math.abs(depthAt(drawn[0]!.polygon, place) - clear.met.depth)).toBeLessThan(0.05);
            }
          },
        ),
        { numRuns: 25 },
      );
      expect(looked).toBeGreaterThan(150);
      expect(onWood).toBeGreaterThan(40);
    },
  );

  test('closed, covers from any side as much of the sheet as the block round it', () => {
    const design = designBox({ ...exampleBox, kind });
    const { outsideLength: L, outsideWidth: W, outsideHeight: H } = design.values;
    fc.assert(
      fc.property(anyTurn, anyTip, (turn, tip) => {
        const { seen, view } = benchPicture(design, 'closed', turn, tip);
        const covered = seen
          .flatMap(({ polygons }) => polygons)
          .reduce((sum, { points }) => {
            const twice = points.reduce((all, [a, b], index) => {
              const [c, d] = points[(index + 1) % points.length]!;
              return all + a * d - c * b;
            }, 0);
            return sum + Math.abs(twice) / 2;
          }, 0);
        // Each of the three faces turned to the eye is shortened by the cosine of its angle.
        const [x, y, z] = view.into.map(Math.abs) as [number, number, number];
        const block = W * H * x + L * H * y + L * W * z;
        // Over the front of a sliding lid nothing stands: there one sees past the block's upper edge.
        expect(covered / block).toBeGreaterThan(kind === 'sliding' ? 0.93 : 0.985);
        // Seen almost along the table, rim and bottom are lines, and a seam between two faces counts twice: 0.03 % at most
        // of 2,700 boxes at random.
        expect(covered / block).toBeLessThan(1.0005);
      }),
      { numRuns: 60 },
    );
  });

  test('unturned is the view that is equal along all axes, face by face', () => {
    const design = designBox({ ...exampleBox, kind });
    const all = ({ name, normal, polygons }: { name: unknown; normal: unknown; polygons: unknown }) => ({
      name,
      normal,
      polygons,
    });
    expect(benchPicture(design, 'closed', 0, 0).seen.map(all)).toEqual(
      visible(isometric, shownParts(design)).map(all),
    );
  });

  test('stays on its sheet at any turn, and the sheet keeps its size', () => {
    const design = designBox({ ...exampleBox, kind });
    fc.assert(
      fc.property(anyPose, anyTurn, anyTip, (pose, turn, tip) => {
        const { seen, sheet } = benchPicture(design, pose, turn, tip);
        const [left, top, wide, high] = sheet;
        for (const { polygons } of seen)
          for (const { points } of polygons)
            for (const [x, y] of points) {
              expect(x).toBeGreaterThan(left);
              expect(x).toBeLessThan(left + wide);
              expect(y).toBeGreaterThan(top);
              expect(y).toBeLessThan(top + high);
            }
        const [, , otherWide, otherHigh] = benchPicture(design, pose, turn / 2, tip).sheet;
        expect(otherWide).toBeCloseTo(wide, 6);
        expect(otherHigh).toBeCloseTo(high, 6);
      }),
      { numRuns: 60 },
    );
  });

  test('is pointed at where a part is seen, and a touch there takes that part', () => {
    fc.assert(
      fc.property(fc.constantFrom(...joints), anyPose, anyTurn, anyTip, (joint, pose, turn, tip) => {
        const picture = benchPicture(designBox({ ...exampleBox, kind, joint }), pose, turn, tip);
        for (const part of partsOfBox) {
          const { at, hidden } = picture.spots[part];
          expect(at.every(Number.isFinite)).toBe(true);
          if (hidden) continue;
          expect(partAt(picture, at, 0), `${part}, ${pose}`).toBe(part);
          const wood = firstMet(picture.shown, picture.view, at)!.thing;
          expect(owners[part](wood.name.name, wood.solid), `${part} is ${wood.name.name}`).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});

/** The wood that each part of the box may be seen on. */
const owners: Readonly<Record<PartOfBox, (name: string, piece: object) => boolean>> = {
  inside: (name) => name in outward,
  walls: (name) => name in outward,
  corners: (name) => wallOf(name as 'front') !== undefined || name === 'keys' || name === 'splines',
  grooves: (name) => wallOf(name as 'front') !== undefined,
  bottom: (name) => name === 'bottom',
  lid: (name, piece) => name !== 'bottom' && (!(name in outward) || (piece as { opens: boolean }).opens),
};

describe('a touch', () => {
  const design = designBox(exampleBox);
  const picture = benchPicture(design, 'closed', 0, 0);

  test('within reach of the box takes what is nearest, farther off nothing', () => {
    const rightmost = picture.seen
      .flatMap(({ polygons }) => polygons.flatMap(({ points }) => points))
      .reduce((far, point) => (point[0] > far[0] ? point : far));
    expect(partAt(picture, [rightmost[0] + 19, rightmost[1]], 20)).toBeDefined();
    expect(partAt(picture, [rightmost[0] + 21, rightmost[1]], 20)).toBeUndefined();
  });

  test('beside a groove takes the groove, and in the middle of a wall the wall', () => {
    const apart = benchPicture(design, 'apart', 0, 0);
    const [x, y] = apart.spots.grooves.at;
    // A groove is 5 mm wide: a fingertip that is 4 mm off its middle line misses it by a little.
    for (const aside of [-4, 4]) expect(partAt(apart, [x, y + aside], 20)).toBe('grooves');
    expect(partAt(apart, apart.spots.walls.at, 20)).toBe('walls');
  });
});

test.each([
  [0, 0, 'The front and the left side are turned to you, seen from above.'],
  [-45, 0, 'The front is turned to you, seen from above.'],
  [45, -60, 'The left side is turned to you, seen from below.'],
  [90, 0, /the back/i],
  [180, 0, 'The back and the right side are turned to you, seen from above.'],
] as const)('turned by %s° and tipped by %s° it is said which side is seen', (turn, tip, words) => {
  expect(sideOfBox(benchPicture(designBox(exampleBox), 'closed', turn, tip))).toMatch(words);
});
