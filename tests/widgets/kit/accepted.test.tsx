/** A verdict accepted on purpose: it alone is accepted, and a reason kept before checks had ids goes on counting. */
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { verdicts, wholeModel } from '../../../src/box/whole/index.ts';
import { decodeStore, encodeStore } from '../../../src/notebook/codec.ts';
import { Exceptions } from '../../../src/widgets/build-sheet/Exceptions.tsx';
import { exampleBox } from '../../box/reckoned-box.ts';

const { checks } = wholeModel;

/** Groove of the bottom and of the lid both deeper than half the wall: two verdicts of one rule. */
const deep: Box = { ...exampleBox, grooveDepth: 6, lidGrooveDepth: 6 };
const sheet = (box: Box) => {
  const html = renderToString(<Exceptions design={designBox(box)} />);
  const [before = '', open = ''] = html.split('Not kept, no reason given');
  return { accepted: before.split('Accepted on purpose')[1] ?? '', open };
};
const labelOf = (id: string) => checks.find((check) => check.id === id)!.label;

test('accepting one verdict of a rule leaves the other one of the same rule unaccepted', () => {
  const rules = verdicts(designBox(deep).values).filter(({ check }) => check.rule === 'groove-depth');
  expect(rules.map(({ state }) => state)).toEqual(['breaks', 'breaks']);
  for (const [id, other] of [
    ['groove-depth', 'groove-depth-lid'],
    ['groove-depth-lid', 'groove-depth'],
  ] as const) {
    const { accepted, open } = sheet({ ...deep, accepted: { [id]: 'thick tongue' } });
    expect(accepted).toContain(`${labelOf(id)} `);
    expect(accepted).toContain('Accepted because: thick tongue');
    expect(accepted).not.toContain(labelOf(other));
    expect(open).toContain(labelOf(other));
    expect(open).not.toContain(labelOf(id));
  }
});

test('a reason kept under the name of a rule counts for its first check, and is read back from the store', () => {
  const box = { ...deep, accepted: { 'groove-depth': 'as my teacher does' } };
  const decoded = decodeStore(encodeStore(box));
  expect(decoded.ok && decoded.box.accepted).toEqual(box.accepted);
  expect(sheet(box).accepted).toContain(labelOf('groove-depth'));
  expect(sheet(box).accepted).not.toContain(labelOf('groove-depth-lid'));
});

test('every check has a name of its own that the store can keep, and each rule’s first check has the rule’s', () => {
  expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
  for (const rule of new Set(checks.map((check) => check.rule))) {
    const of = checks.filter((check) => check.rule === rule);
    for (const { id } of of) {
      expect(id.startsWith(rule), id).toBe(true);
      expect(id).toMatch(/^[a-z0-9-]{1,60}$/);
    }
    expect(of.filter(({ id }) => id === rule).length, rule).toBeLessThanOrEqual(1);
    expect(
      of.some(({ id }) => id === rule),
      rule,
    ).toBe(true);
  }
});
