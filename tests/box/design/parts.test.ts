/** The parts of a box take no place twice and leave no hole: geometry done another way, by sampling points. */
import { describe, expect, test } from 'vitest';
import { type Design, designBox } from '../../../src/box/design/design.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { inSolid, type Point } from '../../../src/geometry/solid.ts';
import { volumeOf } from '../../../src/geometry/volume.ts';
import { exampleBox } from '../reckoned-box.ts';

/** A small seeded generator, so that a failure can be looked at again (mulberry32). */
function random(seed: number) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const kinds = ['sliding', 'lift-off', 'sawn'] as const;
const joints = ['finger', 'dovetail', 'mitre', 'keyed-mitre', 'splined-mitre', 'rabbet', 'butt'] as const;
const bottoms = {
  'a solid bottom in grooves': {},
  'a plywood bottom floating in grooves': { bottom: 'plywood', bottomThickness: 4, bottomTongue: 4 },
  'a plywood bottom glued in grooves': {
    bottom: 'plywood',
    bottomFit: 'glued',
    bottomThickness: 4,
    bottomTongue: 4,
  },
  'a plywood bottom glued in a rabbet': {
    bottom: 'plywood',
    bottomFit: 'glued',
    bottomSeat: 'rabbet',
    bottomThickness: 4,
    bottomTongue: 4,
    bottomLip: 1,
  },
} satisfies Record<string, Partial<Box>>;

const pieces = (design: Design) =>
  design.parts.flatMap(({ name, pieces }) => pieces.map((piece) => ({ name, piece })));

/** The reasons for which air may show on the outside of the closed box: a groove never does, but for the way of the lid. */
const mayShow = (design: Design, point: Point) =>
  ['way of the lid', 'finger fit', 'front hole'].includes(gapAt(design, point) ?? '') ||
  (design.box.kind === 'sliding' &&
    point.x < 0.1 &&
    point.z > design.values.outsideHeight - design.box.lidLip - design.box.lidThickness);

/** Why a point in the ring of the walls may be empty: from the inputs and the lists of grooves and corners alone. */
function gapAt(design: Design, { x, y, z }: Point): string | undefined {
  const { box, grooves, corners } = design;
  const { outsideLength: L, outsideWidth: W, outsideHeight: H } = design.values;
  const t = box.wall;
  const lidUnder = H - box.lidLip - box.lidThickness;
  // From the nearer outer corner inward.
  const u = Math.min(x, L - x);
  const v = Math.min(y, W - y);
  if (box.kind === 'sliding' && x < t && z > lidUnder) {
    const covered = { rabbet: v < t / 2, mitre: x > v, 'keyed-mitre': x > v, 'splined-mitre': x > v };
    if (!(covered[box.joint as 'rabbet'] ?? v < t)) return 'way of the lid';
    if (box.joint === 'splined-mitre' && v < t) return 'spline groove above the front';
  }
  if (box.joint === 'finger' && u < t && v < t) {
    for (const corner of corners) {
      // Heights of a sawn box are those before the saw: above the kerf all is lower by the kerf.
      const low = corner.of === 'lid' ? H - box.lidHeight : 0;
      const sawn = box.kind === 'sawn' && z > H - box.lidHeight ? box.kerf : 0;
      for (const { from, to } of corner.segments)
        for (const border of [from, to])
          if (Math.abs(z + sawn - low - border) <= box.fingerFit / 4 + 1e-9) return 'finger fit';
    }
  }
  for (const groove of grooves) {
    if (z < groove.bottomEdge || z > groove.bottomEdge + groove.width) continue;
    const deep = { left: y, right: W - y, front: x, back: L - x }[groove.wall];
    if (deep >= t - groove.depth && deep <= t) return 'groove';
  }
  // Above a front that ends inside one of its own fingers: named by a verdict.
  const { frontHole } = design.values;
  const top = design.plan!.frontTop;
  if (frontHole > 0 && x < t && z >= top && z <= top + frontHole + design.box.fingerFit) return 'front hole';
  return undefined;
}

describe.each(kinds)('a box of kind %s', (kind) => {
  describe.each(joints)('with corners of kind %s', (joint) => {
    test.each(Object.entries(bottoms))('%s', (_, bottom) => {
      const design = designBox({ ...exampleBox, clearance: 5, ...bottom, kind, joint });
      const { outsideLength: L, outsideWidth: W, outsideHeight: H, wall: t } = design.values;
      expect(design.refusals).toEqual([]);
      const all = pieces(design);
      const next = random(7);
      const samples = 6000;
      const share = (low: number, high: number) => low + next() * (high - low);
      const hits = new Map<string, number>();
      for (let index = 0; index < samples; index++) {
        // Every other point lies near a corner, where the joints are.
        const near = index % 2 === 0;
        const end = next() < 0.5 ? [0, 2 * t] : [L - 2 * t, L];
        const side = next() < 0.5 ? [0, 2 * t] : [W - 2 * t, W];
        const point = near
          ? { x: share(end[0]!, end[1]!), y: share(side[0]!, side[1]!), z: share(0, H) }
          : { x: share(0, L), y: share(0, W), z: share(0, H) };
        const found = all.filter(({ piece }) => inSolid(piece, point)).map(({ name }) => name);
        if (found.length > 1) expect.fail(`${JSON.stringify(point)} lies in ${found.join(' and ')}`);
        const ring = point.x < t || point.x > L - t || point.y < t || point.y > W - t;
        if (ring && found.length === 0 && gapAt(design, point) === undefined)
          expect.fail(`a hole at ${JSON.stringify(point)}`);
        if (!near) for (const name of found) hits.set(name, (hits.get(name) ?? 0) + 1);
      }
      expect(hits.size).toBeGreaterThanOrEqual(6);
      // Wood and air fill the box between them: the points in wood make up the volume of all parts.
      const even = samples / 2;
      const wood = [...hits.values()].reduce((sum, count) => sum + count, 0) / even;
      const counted = design.parts.reduce((sum, { volume }) => sum + volume, 0) / (L * W * H);
      expect(Math.abs(wood - counted)).toBeLessThan(4 * Math.sqrt((counted * (1 - counted)) / even));
    });
  });
});

test.each(kinds)('the volume of every part of a %s box is that of its pieces together', (kind) => {
  for (const joint of joints)
    for (const { name, pieces, volume } of designBox({ ...exampleBox, kind, joint, pull: 'glued' }).parts)
      expect(
        pieces.reduce((sum, piece) => sum + volumeOf(piece), 0),
        name,
      ).toBeCloseTo(volume, 6);
});

test.each(kinds)('the volume of every piece of a %s box is what counting points in it gives', (kind) => {
  const next = random(3);
  for (const joint of joints) {
    for (const { name, piece } of pieces(designBox({ ...exampleBox, kind, joint, pull: 'glued' }))) {
      const { x, y, z } = piece.block;
      const count = 8000;
      const within = ([low, high]: readonly [number, number]) => low + next() * (high - low);
      let inside = 0;
      for (let index = 0; index < count; index++)
        if (inSolid(piece, { x: within(x), y: within(y), z: within(z) })) inside++;
      const share = volumeOf(piece) / ((x[1] - x[0]) * (y[1] - y[0]) * (z[1] - z[0]));
      // Four standard deviations of a count of independent points.
      const chance = 4 * Math.sqrt((share * (1 - share)) / count) + 1e-9;
      expect(Math.abs(share - inside / count), `${name} of ${kind}, ${joint}`).toBeLessThan(chance);
    }
  }
});

test('no two parts of any box that can be built share a point, and no groove shows on its outside', () => {
  const next = random(11);
  const pick = <T>(...from: readonly T[]) => from[Math.floor(next() * from.length)]!;
  const share = (low: number, high: number) => low + next() * (high - low);
  let built = 0;
  for (let index = 0; index < 1000; index++) {
    const box: Box = {
      ...exampleBox,
      kind: pick(...kinds),
      joint: pick(...joints),
      bottom: pick('solid', 'plywood'),
      bottomFit: pick('floating', 'glued'),
      bottomSeat: pick('groove', 'rabbet'),
      pull: pick('notch', 'glued'),
      sizeFrom: 'outside',
      wantedLength: share(150, 400),
      wantedWidth: share(100, 400),
      wantedHeight: share(50, 150),
      contentsLength: 20,
      contentsWidth: 20,
      contentsHeight: 5,
      wall: share(6, 14),
      fingerWidth: share(4, 15),
      fingerFit: share(0, 0.5),
      tailCount: pick(1, 2, 3, 4),
      dovetailSlope: share(4, 10),
      pinWidth: share(2, 8),
      keyCount: pick(1, 2, 3, 4),
      keyThickness: share(1, 4),
      bottomThickness: share(3, 9),
      bottomTongue: share(2, 6),
      bottomLip: share(1, 12),
      grooveDepth: share(1, 7),
      bottomGap: share(0, 2),
      lidThickness: share(4, 9),
      lidLip: share(1, 8),
      lidGrooveDepth: share(1, 7),
      lidPlay: share(0, 3),
      lidHeight: share(15, 50),
      linerRise: share(2, 10),
      linerThickness: share(2, 6),
      lidRoom: share(0, 1),
      kerf: share(0.5, 4),
    };
    const design = designBox(box);
    if (design.refusals.length > 0) continue;
    built++;
    const all = pieces(design);
    const { outsideLength: L, outsideWidth: W, outsideHeight: H } = design.values;
    const near = 2 * box.wall;
    for (let sample = 0; sample < 150; sample++) {
      const point = {
        x: pick(share(0, near), share(L - near, L), share(0, L)),
        y: pick(share(0, near), share(W - near, W), share(0, W)),
        z: share(0, H),
      };
      const found = all.filter(({ piece }) => inSolid(piece, point)).map(({ name }) => name);
      if (found.length > 1) expect.fail(`${found.join(' and ')} of ${JSON.stringify(box)}`);
      const ring = Math.min(point.x, L - point.x, point.y, W - point.y) < box.wall;
      if (ring && found.length === 0 && gapAt(design, point) === undefined)
        expect.fail(`a hole at ${JSON.stringify(point)} of ${JSON.stringify(box)}`);
      // The same point brought to one of the four outer faces.
      const skin = 0.01;
      const shown = pick<Point>(
        { ...point, x: skin },
        { ...point, x: L - skin },
        { ...point, y: skin },
        { ...point, y: W - skin },
      );
      if (!all.some(({ piece }) => inSolid(piece, shown)) && !mayShow(design, shown))
        expect.fail(`air shows at ${JSON.stringify(shown)} of ${JSON.stringify(box)}`);
    }
  }
  expect(built).toBeGreaterThan(200);
}, 30_000);
