/** The order of work can be done: nothing is cut from less than it needs, and nothing comes before what it rests on. */
import { describe, expect, test } from 'vitest';

import { type Design, designBox } from '../../../src/box/design/design.ts';
import { shownSize } from '../../../src/box/design/shown-size.ts';
import { stockOf } from '../../../src/box/stock/stock.ts';
import { plainly } from '../../../src/box/work/say.ts';
import { workOf } from '../../../src/box/work/work.ts';
import { wallTemplates } from '../../../src/figures/template/wall-template.ts';
import { format } from '../../../src/units/index.ts';
import { goldenBoxes } from '../golden/boxes.ts';
import { exampleBox } from '../reckoned-box.ts';

const built = goldenBoxes()
  .map(designBox)
  .filter(({ refusals }) => refusals.length === 0);
const works = new Map(built.map((design) => [design, workOf(design)!.steps]));
const steps = (design: Design) => works.get(design)!;
const place = (design: Design, id: string) => steps(design).findIndex((step) => step.id === id);
const text = (design: Design, id: string) => {
  const step = steps(design).find((one) => one.id === id);
  return step && plainly(step.does, 'mm');
};

describe.each(['rough parts', 'order', 'cautions', 'words'])('%s', (what) => {
  test('hold for every box of the record that can be built', () => {
    expect(built.length).toBeGreaterThan(600);
    for (const design of built) {
      const { box, plan, parts } = design;
      const part = (name: string) => parts.find((one) => one.name === name)!;
      if (what === 'rough parts') {
        // All walls of the box are ripped to one height before the front is lowered.
        const rip = box.kind === 'lift-off' ? plan!.rim : plan!.height + plan!.sawn;
        for (const name of ['front', 'back', 'left', 'right'])
          expect(part(name).rough.width, name).toBeGreaterThan(rip);
        for (const { finished, rough, material, label } of parts)
          if (material === 'solid')
            for (const side of ['length', 'width', 'thickness'] as const)
              expect(rough[side], label).toBeGreaterThanOrEqual(finished[side]);
      }
      if (what === 'order') {
        const precedes = (first: string, second: string) => {
          const [one, other] = [place(design, first), place(design, second)];
          if (one >= 0 && other >= 0) expect(one, `${first} before ${second}`).toBeLessThan(other);
        };
        // Short parts stay joined until they are planed.
        precedes('resaw', 'thickness');
        precedes('thickness', 'first-ends');
        precedes('bottom-thickness', 'bottom');
        for (const early of ['notch', 'pull']) {
          precedes('lid', early);
          precedes(early, 'finish');
        }
        precedes('liner-strip', 'liner');
        precedes('splines', 'glue');
        expect(place(design, 'bottom-thickness') >= 0).toBe(box.bottom === 'solid');
        expect(place(design, 'splines') >= 0).toBe(box.joint === 'splined-mitre');
        expect(place(design, 'liner-strip') >= 0).toBe(box.kind === 'lift-off');
        expect(place(design, 'notch') >= 0).toBe(design.lidRun?.notch !== undefined);
      }
      if (what === 'cautions') {
        const caution = (id: string) => steps(design).find((step) => step.id === id)?.caution;
        if (place(design, 'resaw') >= 0) expect(caution('resaw')).toBe('resaw');
        // Shorter than 12 in, or thinner than most planers take: by hand or on a carrier.
        if (box.kind === 'sliding')
          expect(caution('lid')).toBe(
            box.lid === 'plywood'
              ? 'plywood'
              : part('lid').finished.length < 12 * 25.4 || part('lid').finished.thickness < 6
                ? 'shortPanel'
                : 'machines',
          );
        for (const id of ['inside', 'finish', 'bottom'])
          if (place(design, id) >= 0) expect(caution(id), id).toBeTruthy();
      }
      if (what === 'words') {
        expect(text(design, 'lid') ?? '').not.toMatch(/Leave it/);
        for (const { does, check } of steps(design))
          for (const words of [does, check ?? []])
            for (const system of ['mm', 'inch'] as const)
              expect(plainly(words, system)).not.toMatch(/NaN|undefined|–/);
      }
    }
  }, 60_000);
});

/** What a jig does: the first side's edge against the pin, every next slot a pin further, the mate's edge at its first slot. */
function slotsOfJig(cutter: number, toPin: number, height: number): [number, number][] {
  const found: [number, number][] = [];
  for (let from = toPin; from < height; from += cutter + toPin) found.push([from, from + cutter]);
  return found;
}

test('stepping a jig with the printed cutter and distance cuts the sockets where layout and template have them, the last like the first', () => {
  const loose = [0.05, 0.1, 0.2];
  for (const fingerFit of loose) {
    const design = designBox({
      ...exampleBox,
      sizeFrom: 'outside',
      wantedHeight: 117,
      fingerWidth: 9,
      fingerFit,
    });
    const { slotWidth, cutterToPin } = design.values;
    const corner = design.corners.find(({ end }) => end === 'back')!;
    const sockets = corner.segments.filter(({ owner }) => owner === 'end');
    const slots = slotsOfJig(slotWidth, cutterToPin, corner.height);
    expect(sockets.length).toBeGreaterThan(4);
    for (const [index, { from, to }] of sockets.entries()) {
      // A socket is wider than its share by half the play; which side has it depends on the pin, and does not add up.
      const [start, end] = slots[index]!;
      expect(Math.abs((start + end) / 2 - (from + to) / 2)).toBeLessThanOrEqual(fingerFit / 4 + 1e-9);
    }
    expect(slotWidth - cutterToPin).toBeCloseTo(fingerFit, 9);
  }
});

test('a length reads the same in the cut list, in the steps and in the set-ups, in both units', () => {
  const wall = (design: Design, name: string) => design.parts.find((part) => part.name === name)!;
  for (const design of built) {
    const work = workOf(design)!;
    const second = work.steps.find(({ id }) => id === 'second-ends')!;
    const stops = work.setUps.find(({ id }) => id === 'lengths')!.settings;
    for (const system of ['mm', 'inch'] as const) {
      const shown = (name: string) => {
        const { value, kind, ...options } = shownSize(wall(design, name), 'finished', 'length');
        return format(value, kind, { ...options, system });
      };
      expect(plainly(second.does, system)).toContain(
        `both sides to ${shown('left')}, then both ends to ${shown('front')}.`,
      );
      expect(stops.slice(0, 2).map(({ value }) => plainly([value], system))).toEqual([
        shown('left'),
        shown('front'),
      ]);
    }
  }
});

test('no step cuts from less than the steps before it left', () => {
  for (const design of built) {
    const { box, plan, parts } = design;
    const named = (name: string) => parts.find((part) => part.name === name)!;
    // Rough: as the cut list says. Each step then takes away only.
    for (const name of ['front', 'back', 'left', 'right'] as const) {
      const { rough, finished } = named(name);
      let { length, width, thickness } = rough;
      const cutTo = (side: 'length' | 'width' | 'thickness', to: number) => {
        const now = { length, width, thickness }[side];
        expect(now, `${name}, ${side}`).toBeGreaterThanOrEqual(to - 1e-9);
        if (side === 'length') length = to;
        if (side === 'width') width = to;
        if (side === 'thickness') thickness = to;
      };
      cutTo('thickness', plan!.wall);
      cutTo('width', box.kind === 'lift-off' ? plan!.rim : plan!.height + plan!.sawn);
      cutTo('length', finished.length);
      if (name === 'front' && box.kind === 'sliding') cutTo('width', plan!.frontTop);
      // Sawn off with the lid at the end, a wall of a sawn box stays one row of the cut list.
      expect([length, thickness]).toEqual([finished.length, finished.thickness]);
    }
    // The slices of one board, with what the saw takes, go into its thickness.
    for (const board of new Set(stockOf(design).slices.map((slice) => slice.board))) {
      const slices = stockOf(design).slices.filter((slice) => slice.board === board);
      const taken =
        slices.reduce((sum, { sawn }) => sum + sawn, 0) + Math.max(0, box.kerf) * (slices.length - 1);
      if (stockOf(design).shortages.length === 0)
        expect(taken).toBeLessThanOrEqual(box.boardThickness + 1e-6);
    }
  }
});

test('at the front of a lowered side no slot is cut for a finger that is ripped off', () => {
  const low = designBox({ ...exampleBox, kind: 'sliding', joint: 'finger', fingerWidth: 3 });
  const { segments } = low.corners.find(({ end }) => end === 'front')!;
  const last = segments.filter(({ owner }) => owner === 'end').at(-1)!;
  expect(plainly(workOf(low)!.steps.find(({ id }) => id === 'joint')!.does, 'mm')).toContain(
    'cut no slot above',
  );
  // The template of a side shows the socket as it is cut, a whole finger high, also where the front ends within it.
  const hole = designBox({ ...exampleBox, headroom: 7 });
  const left = wallTemplates(hole).find(({ name }) => name === 'left')!;
  const highest = (at: (x: number) => boolean) =>
    Math.max(
      ...left.shapes
        .filter(({ as, points }) => as === 'waste' && points.every(([x]) => at(x)))
        .flatMap(({ points }) => points.map(([, y]) => y)),
    );
  expect(last.to).toBeLessThanOrEqual(low.plan!.frontTop);
  expect(highest((x) => x > left.length / 2)).toBeCloseTo(hole.plan!.frontTop + hole.values.frontHole, 6);
});
