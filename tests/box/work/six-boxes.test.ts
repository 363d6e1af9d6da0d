/** The order of work of quite different boxes, followed at the bench: what is cut exists, and what can hurt is said. */
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import { shownSize } from '../../../src/box/design/shown-size.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { isMitered } from '../../../src/box/subjects/joints/corners.ts';
import { plainly } from '../../../src/box/work/say.ts';
import type { Step } from '../../../src/box/work/step.ts';
import { workOf } from '../../../src/box/work/work.ts';
import { format, type UnitSystem } from '../../../src/units/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const boxes: Readonly<Record<string, Partial<Box>>> = {
  'sliding, fingers, solid': {},
  'sliding, short, plywood bottom and lid, finger hole': {
    sizeFrom: 'inside',
    items: [],
    contentsLength: 90,
    contentsWidth: 60,
    contentsHeight: 15,
    wantedLength: 95,
    wantedWidth: 65,
    wantedHeight: 22,
    wall: 8,
    fingerWidth: 8,
    bottom: 'plywood',
    bottomThickness: 3.5,
    lid: 'plywood',
    pull: 'hole',
  },
  'sliding, butt joints, thick walls, glued pull': {
    joint: 'butt',
    wall: 14,
    pull: 'glued',
    boardThickness: 55,
  },
  'lift-off, dovetails': { kind: 'lift-off', joint: 'dovetail', headroom: 30, lidHeight: 35 },
  'lift-off, splined miters, thick board opened like a book': {
    kind: 'lift-off',
    joint: 'splined-mitre',
    headroom: 50,
    lidHeight: 30,
    wall: 14,
    wallsFrom: 'bookmatched',
    boardThickness: 40,
    boardLength: 1500,
    lid: 'plywood',
  },
  'sawn, keyed miters, plywood bottom glued in': {
    kind: 'sawn',
    joint: 'keyed-mitre',
    headroom: 30,
    bottom: 'plywood',
    bottomFit: 'glued',
  },
};
const systems: readonly UnitSystem[] = ['mm', 'inch'];

describe.each(Object.entries(boxes))('the box %s', (_, changes) => {
  const design = designBox({ ...exampleBox, ...changes });
  const { box, parts } = design;
  const { steps, setUps } = workOf(design)!;
  const named = (name: string) => parts.find((part) => part.name === name);
  const find = (id: string) => steps.find((step) => step.id === id);
  const does = ({ does: words }: Step, system: UnitSystem = 'mm') => plainly(words, system);
  const precedes = (first: string, second: string) => {
    const ids = steps.map(({ id }) => id);
    expect(ids).toContain(first);
    expect(ids.indexOf(first), `${first} before ${second}`).toBeLessThan(ids.indexOf(second));
  };

  test('can be built', () => expect(design.refusals).toEqual([]));

  test('has a caution at every step with an edge, a blade, a bit, dust or a finish', () => {
    for (const step of steps)
      if (/\b(cut|plane|rip|saw|resaw|bore|sand|finish|miter|chop|let in|slots)\b/i.test(does(step)))
        expect(step.caution, `${step.id}: ${does(step)}`).toBeDefined();
    // Only reading, marking, putting together and writing have none.
    expect(steps.filter(({ caution }) => !caution).map(({ id }) => id)).toEqual([
      'air',
      'marks',
      'dry-fit',
      'glue',
      'last',
    ]);
  });

  test('never has plywood planed, and has a caution of its own where plywood is cut', () => {
    for (const [id, material] of [
      ['bottom', box.bottom],
      ['lid', box.lid],
      ['lid-panel', box.lid],
    ] as const) {
      const step = find(id);
      if (material === 'plywood' && step) {
        expect(does(step)).not.toMatch(/[Pp]lane/);
        expect(step.caution).toBe('plywood');
      }
    }
  });

  test('has every panel in its grooves before the corners are closed', () => {
    const held = box.kind !== 'sliding';
    expect(/lid panel in/.test(does(find('dry-fit')!))).toBe(held);
    expect(/Lid panel in/.test(does(find('glue')!))).toBe(held);
    precedes('bottom', 'dry-fit');
    if (held) precedes('lid-panel', 'dry-fit');
  });

  test('asks for no spline or panel before it is made', () => {
    const made = steps.findIndex(({ id }) => id === 'splines');
    for (const [index, { id, check }] of steps.entries()) {
      const words = plainly(check!, 'mm');
      if (/spline/.test(words)) expect(index, id).toBeGreaterThanOrEqual(made);
      expect(words).not.toMatch(/scrap of the real panel/);
    }
  });

  test('warns of oil inside before the first inside face is finished', () => {
    for (const id of ['panel-finish', 'inside']) expect(does(find(id)!), id).toMatch(/[Nn]o drying oil/);
    precedes('panel-finish', 'finish');
    precedes('inside', 'finish');
  });

  test('lets wood over 12 mm settle for longer than three days between weighings', () => {
    const board = plainly(find('settle')!.check!, 'mm');
    expect(/3 days apart/.test(board)).toBe(box.boardThickness <= 12);
    const slices = find('resaw');
    if (slices) {
      const thickest = Math.max(
        ...[...does(slices).matchAll(/([\d.]+)\smm/g)].map(([, size]) => Number(size)),
      );
      expect(/3 days apart/.test(plainly(slices.check!, 'mm'))).toBe(thickest <= 12);
    }
  });

  test('prints the sizes of its parts as the cut list does, in both units', () => {
    for (const system of systems) {
      const listed = (name: string, side: 'length' | 'width' | 'thickness') => {
        const { value, kind, ...options } = shownSize(named(name)!, 'finished', side);
        return format(value, kind, { ...options, system });
      };
      const inStep = (id: string, ...sizes: string[]) => {
        const step = find(id);
        for (const size of sizes) if (step) expect(does(step, system), id).toContain(size);
      };
      inStep('thickness', listed('front', 'thickness'));
      inStep('height', listed('back', 'width'));
      inStep('second-ends', listed('left', 'length'), listed('front', 'length'));
      inStep('bottom', listed('bottom', 'length'), listed('bottom', 'width'));
      inStep('bottom-thickness', listed('bottom', 'thickness'));
      for (const id of ['lid', 'lid-panel']) inStep(id, listed('lid', 'length'), listed('lid', 'width'));
      if (box.kind === 'sliding') {
        inStep('front', listed('front', 'width'));
        inStep('fit-lid', listed('lid', 'width'));
      }
      if (named('pull'))
        inStep('pull', listed('pull', 'length'), listed('pull', 'width'), listed('pull', 'thickness'));
      if (named('liner-left'))
        inStep('liner-strip', listed('liner-left', 'width'), listed('liner-left', 'thickness'));
      // As deep as the wall is thick: the cut list and the set-up say one number.
      const depth = setUps
        .find(({ id }) => id === 'fingers' || id === 'keys')
        ?.settings.find(({ what }) => what.startsWith('depth'));
      if (depth) expect(plainly([depth.value], system)).toBe(listed('front', 'thickness'));
    }
  });

  test('is squared over no more than its walls are high', () => {
    const check = plainly(find('first-ends')!.check!, 'mm');
    const over = Number(check.match(/over ([\d.]+)\smm/)?.[1] ?? Number.NaN);
    const walls = parts.filter(({ name }) => /^(lid-)?(front|back|left|right)$/.test(name));
    // Miters are checked across the width, without a number.
    if (isMitered(box)) expect(over).toBeNaN();
    else expect(over).toBeCloseTo(Math.max(...walls.map(({ finished }) => finished.width)), 1);
  });
});

test('keys and splines are cut as their cutter is: a metric one in thousandths for a reader in inches, 1/8 in by its name', () => {
  const cutterOf = (keyThickness: number, system: UnitSystem) => {
    const work = workOf(
      designBox({ ...exampleBox, kind: 'sawn', joint: 'keyed-mitre', headroom: 30, keyThickness }),
    )!;
    const { value } = work.setUps.find(({ id }) => id === 'keys')!.settings[0]!;
    return plainly([value], system).replaceAll('\u00a0', ' ');
  };
  expect(cutterOf(3, 'inch')).toBe('0.118 in');
  expect(cutterOf(3, 'mm')).toBe('3 mm');
  expect(cutterOf(3.175, 'inch')).toBe('1/8 in');
});
