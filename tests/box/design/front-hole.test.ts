/** The hole above a lowered front: by the formula, and by asking the solids what wood stands there. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stepOf } from '../../../src/box/core/field.ts';
import { judge } from '../../../src/box/core/verdict.ts';
import { designBox } from '../../../src/box/design/design.ts';
import { smallestChanges } from '../../../src/box/design/smallest-change.ts';
import { inchExample } from '../../../src/box/subjects/example.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { evaluate, wholeModel } from '../../../src/box/whole/index.ts';
import { inPrism, type Point, type Solid } from '../../../src/geometry/solid.ts';
import { INCH, toField, usualRuler } from '../../../src/units/index.ts';
import { parse } from '../../../src/units/parse.ts';
import { exampleBox } from '../reckoned-box.ts';

const { checks } = wholeModel;

const isWood = ({ block, cuts }: Solid, at: Point) =>
  (['x', 'y', 'z'] as const).every((axis) => at[axis] >= block[axis][0] && at[axis] <= block[axis][1]) &&
  !cuts.some((cut) => inPrism(cut, at));

const sliding = (changes: Partial<Box>): Box => ({
  ...exampleBox,
  kind: 'sliding',
  joint: 'finger',
  fingerFit: 0,
  ...changes,
});

test('is as high as the stretch without wood, walking up the outer corner from the edge of the front', () => {
  let holes = 0;
  fc.assert(
    fc.property(fc.integer({ min: 40, max: 400 }), fc.integer({ min: 50, max: 150 }), (headroom, finger) => {
      const design = designBox(sliding({ headroom: headroom / 10, fingerWidth: finger / 10 }));
      const { plan, parts, values } = design;
      const pieces = parts
        .filter(({ name }) => name === 'left' || name === 'front')
        .flatMap((part) => part.pieces);
      // A point of the corner, outside the lid's groove, which is cut into the inner face.
      const wood = (z: number) => pieces.some((piece) => isWood(piece, { x: plan!.wall / 3, y: 0.2, z }));
      const step = 0.05;
      let open = 0;
      for (let z = plan!.frontTop + step / 2; z < plan!.height && !wood(z); z += step) open += step;
      expect(Math.abs(open - values.frontHole)).toBeLessThan(3 * step);
      if (values.frontHole > 0) holes++;
    }),
    { numRuns: 300 },
  );
  expect(holes).toBeGreaterThan(50);
});

test('is judged, and what closes it is offered: a height or a finger', () => {
  const check = checks.find(({ id }) => id === 'front-ends-with-a-finger')!;
  const box = sliding({ headroom: 7 });
  expect(evaluate(box).frontHole).toBeGreaterThan(0);
  expect(judge(check, evaluate(box))?.state).toBe('unusual');
  const offered = smallestChanges(box, check, usualRuler.mm);
  expect(offered.length).toBeGreaterThan(0);
  for (const { input, inputs } of offered) expect(evaluate({ ...box, ...inputs }).frontHole, input).toBe(0);
});

test('what closes it for an inch reader lies on the rulers of its field, and is read back from there closed', () => {
  const check = checks.find(({ id }) => id === 'front-ends-with-a-finger')!;
  let holes = 0;
  for (let headroom = 4; headroom <= 20; headroom++)
    for (const finger of [7, 8, 9, 10, 12]) {
      // Headroom and fingers in thirty-seconds of an inch.
      const box: Box = {
        ...inchExample,
        headroom: (headroom / 32) * INCH,
        fingerWidth: (finger / 32) * INCH,
      };
      if (evaluate(box).frontHole === 0) continue;
      holes++;
      const offered = smallestChanges(box, check, usualRuler.inch);
      // Where the fingers of the sides fill the height, any other height or finger leaves a sliver there.
      const { fingerCount } = evaluate(box);
      if (Math.abs(fingerCount - Math.round(fingerCount)) > 1e-6)
        expect(offered.length, `${headroom}/32, ${finger}/32`).toBeGreaterThan(0);
      for (const { input, to, inputs } of offered) {
        const closed = evaluate({ ...box, ...inputs });
        expect(closed.frontHole, input).toBe(0);
        expect(judge(check, closed)?.state).toBe('usual');
        const steps = to / stepOf(fields[input], usualRuler.inch);
        expect(steps, input).toBeCloseTo(Math.round(steps), 6);
        const typed = parse(toField(to, fields[input].kind, 'inch'), fields[input].kind, 'inch');
        expect(typed.ok && evaluate({ ...box, ...inputs, [input]: typed.value }).frontHole, input).toBe(0);
      }
    }
  expect(holes).toBeGreaterThan(20);
}, 120_000);
