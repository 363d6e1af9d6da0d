/** The glass over every part of every kind of box with every joint: it is drawn, it is small, its numbers are the design's. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import { boardPane } from '../../../src/figures/box/glass/board-pane.ts';
import { aspectOf, Glass } from '../../../src/figures/box/glass/Glass.tsx';
import { isPlanned, panesOf } from '../../../src/figures/box/glass/panes.ts';
import { exampleBox } from '../../box/reckoned-box.ts';

const kinds = ['sliding', 'lift-off', 'sawn'] as const;
const joints = ['finger', 'dovetail', 'mitre', 'keyed-mitre', 'splined-mitre', 'rabbet', 'butt'] as const;
const parts = ['inside', 'walls', 'corners', 'grooves', 'bottom', 'lid', 'air', 'accuracy'] as const;
/** On a phone and beside a wide plate, px. */
const sizes = [
  [168, 185],
  [600, 168],
] as const;

const drawn = (panes: ReturnType<typeof panesOf>, [width, height]: readonly [number, number]) =>
  renderToString(<Glass panes={panes} title="Under the glass" width={width} height={height} />);

describe.each(kinds)('a box of kind %s', (kind) => {
  test.each(parts)('shows its %s with a scale and numbers, in few elements', (part) => {
    for (const joint of joints)
      for (const bottomSeat of ['groove', 'rabbet'] as const)
        for (const size of sizes) {
          const design = designBox({
            ...exampleBox,
            kind,
            joint,
            bottomSeat,
            ...(bottomSeat === 'rabbet' && { bottom: 'plywood', bottomFit: 'glued' }),
          });
          const svg = drawn(panesOf(part, design, aspectOf(size[0], size[1])), size);
          expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
          expect(svg.match(/<[a-z]/g)!.length).toBeLessThan(90);
          expect(svg).toMatch(/, (× \d+(\.\d)?|1:\d+)</);
          expect(svg).toMatch(/class="label mm on-lines"[^>]*>[^<]*\d/);
        }
  });
});

describe('the numbers on the glass', () => {
  const design = designBox(exampleBox);
  const mm = (part: (typeof parts)[number]) =>
    [...drawn(panesOf(part, design, 3), [600, 168]).matchAll(/class="label mm[^>]*>([^<]*)</g)].map(
      ([, text]) => text!.replace('\u00a0', ' '),
    );
  const { values: v } = design;
  test.each([
    ['walls', [v.wall, v.outsideHeight, v.outsideWidth]],
    ['inside', [v.insideHeight, v.insideWidth]],
    ['grooves', [v.lidLip, v.lidGrooveDepth, v.bottomLip, v.grooveDepth]],
    ['bottom', [v.bottomThickness]],
    ['lid', [v.lidThickness]],
  ] as const)('over the %s are those of the box', (part, wanted) => {
    for (const number of wanted) expect(mm(part)).toContain(`${Math.round(number * 10) / 10} mm`);
  });

  test('the same length is drawn larger where the window is smaller, and the scale says so', () => {
    const scale = (part: (typeof parts)[number]) => {
      const [, times, part1] = /, (?:× ([\d.]+)|1:(\d+))</.exec(drawn(panesOf(part, design, 3), [600, 168]))!;
      return times ? Number(times) : 1 / Number(part1);
    };
    expect(scale('lid')).toBeGreaterThan(scale('walls'));
  });
});

test('the first slice of the board is shown with what is cut from it, at the size of the board', () => {
  const design = designBox(exampleBox);
  if (!isPlanned(design)) throw new Error('the example has a plan');
  const pane = boardPane(design);
  expect(pane.window).toEqual([0, 0, design.box.boardLength, design.box.boardWidth]);
  expect(pane.cuts.length).toBeGreaterThan(0);
  for (const { polygons } of pane.cuts)
    for (const { points } of polygons)
      for (const [x, y] of points) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(design.box.boardLength);
        expect(y).toBeGreaterThanOrEqual(-1e-9);
        expect(y).toBeLessThanOrEqual(design.box.boardWidth);
      }
});

test('a box without room between its walls has nothing under the glass', () => {
  expect(
    panesOf('walls', designBox({ ...exampleBox, sizeFrom: 'outside', wantedWidth: 30, wall: 20 }), 3),
  ).toEqual([]);
});
