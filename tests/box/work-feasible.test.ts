/** The order of work can be done: nothing is cut from less than it needs, and nothing comes before what it rests on. */
import { describe, expect, test } from 'vitest';
import { type Design, designBox } from '../../src/box/design.ts';
import { plainly } from '../../src/box/work/words.ts';
import { workOf } from '../../src/box/work.ts';
import { goldenBoxes } from './golden/boxes.ts';

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
            part('lid').finished.length < 12 * 25.4 || part('lid').finished.thickness < 6
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
