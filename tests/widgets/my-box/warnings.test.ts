/** What wants a look: what cannot be built first, then what breaks, then what is unusual; reasons given are no warnings. */
import { expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import { mendRefusal } from '../../../src/box/design/mend-refusal.ts';
import { smallestChanges } from '../../../src/box/design/smallest-change.ts';
import { exampleBox, inchExample } from '../../../src/box/subjects/example.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { verdicts } from '../../../src/box/whole/index.ts';
import { type Ruler, usualRuler } from '../../../src/units/index.ts';
import { firstPart, mendsOfExample } from '../../../src/widgets/my-box/known-mends.ts';
import { countOf, firstSentence, judgedOf, type Warning } from '../../../src/widgets/my-box/warnings.ts';

const judged = (changes: Partial<Box>) => {
  const design = designBox({ ...exampleBox, ...changes });
  return judgedOf(verdicts(design.values), design.refusals, design.box.accepted);
};

test('what cannot be built stands first, then what breaks', () => {
  // A groove as deep as the wall comes out of the other face; a lid without play jams.
  const { warnings } = judged({ grooveDepth: 8, lidPlay: 0.1 });
  const kinds = warnings.map((one) => ('refusal' in one ? 'refused' : one.breaks ? 'breaks' : 'unusual'));
  expect(kinds[0]).toBe('refused');
  expect(kinds).toContain('breaks');
  const order = ['refused', 'breaks', 'unusual'];
  expect(kinds).toEqual([...kinds].sort((a, b) => order.indexOf(a) - order.indexOf(b)));
});

test('every verdict is a warning, kept, unknown or left on purpose, and never two of them', () => {
  for (const changes of [{}, { lidPlay: 0.1 }, { species: 'no-such-wood' }, { wall: 20 }]) {
    const design = designBox({ ...exampleBox, ...changes });
    const { warnings, accepted, unknown, kept } = judgedOf(verdicts(design.values), [], {
      'simple-ratio': 'so',
    });
    const ids = [
      ...warnings.map(({ id }) => id),
      ...[...accepted, ...unknown, ...kept].map(({ check }) => check.id),
    ];
    expect([...ids].sort()).toEqual(
      verdicts(design.values)
        .map(({ check }) => check.id)
        .sort(),
    );
  }
});

test('a rule left on purpose is no warning, and is one again without the reason', () => {
  const id = 'wall-thickness';
  expect(judged({ wall: 20 }).warnings.map((one) => one.id)).toContain(id);
  const { warnings, accepted } = judged({ wall: 20, accepted: { [id]: 'thick walls are the look of it' } });
  expect(warnings.map((one) => one.id)).not.toContain(id);
  expect(accepted.map(({ check }) => check.id)).toEqual([id]);
});

test('counts tell what breaks from what is to be looked at', () => {
  const { warnings } = judged({ lidPlay: 0.1 });
  const { breaks, looks } = countOf(warnings);
  expect(breaks).toBeGreaterThan(0);
  expect(breaks + looks).toBe(warnings.length);
});

/** What mends a warning, as the page asks for it. */
const mendsOf = (box: Box, warning: Warning, ruler: Ruler) =>
  'verdict' in warning
    ? smallestChanges(box, warning.verdict.check, ruler)
    : [mendRefusal(box, warning.refusal, ruler) ?? []].flat();

test('a change that mends is one that mends: with it the warning is gone, and nothing is worse', () => {
  for (const [box, system] of [
    [{ ...exampleBox, lidPlay: 0.1 }, 'mm'],
    [{ ...inchExample, grooveDepth: 10 }, 'inch'],
  ] as const) {
    const design = designBox(box);
    const { warnings } = judgedOf(verdicts(design.values), design.refusals, {});
    const mended = warnings.filter((warning) => mendsOf(box, warning, usualRuler[system]).length > 0);
    expect(mended.length).toBeGreaterThan(0);
    for (const warning of mended) {
      const [mend] = mendsOf(box, warning, usualRuler[system]);
      const after = designBox({ ...box, [mend!.input]: mend!.to });
      const left = judgedOf(verdicts(after.values), after.refusals, {}).warnings;
      expect(left.map(({ id }) => id)).not.toContain(warning.id);
      expect(countOf(left).breaks).toBeLessThanOrEqual(countOf(warnings).breaks);
    }
  }
});

test('a first visit begins at a warning that one change mends', () => {
  const known = mendsOfExample();
  const part = firstPart(known);
  const { warnings } = judged({});
  const here = warnings.filter((one) => one.part === part);
  expect(here.some(({ id }) => known.mm[id]!.length > 0)).toBe(true);
});

test.each([
  ['It drags. It jams.', 'It drags.'],
  ['At 0.5 mm it jams. Wax it.', 'At 0.5 mm it jams.'],
  ['No end', 'No end'],
])('the first sentence of “%s” is “%s”', (text, first) => {
  expect(firstSentence(text)).toBe(first);
});
