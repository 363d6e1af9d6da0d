/** What physics supports: its numbers come from relations, within their range, and from nothing that is typed. */
import { describe, expect, test } from 'vitest';
import { outsideRange } from '../../src/calc/core/working.ts';
import { relations } from '../../src/calc/index.ts';
import { borneOut, pieces, type Sum, workedOut } from '../../src/prose/physics.ts';
import { rules, tableOf } from './content.ts';

interface Heard {
  readonly heard: string;
  readonly because: string;
  readonly numbers: Readonly<Record<string, Sum>>;
  readonly rule: string;
}
const heard = Object.entries(tableOf<Heard>('physics/heard.yaml'));
const open = Object.entries(
  tableOf<{ readonly because: string; readonly rule: string }>('physics/open.yaml'),
);
const ruleIds = rules.map(({ id }) => id);

describe.each(heard)('“%s”', (_, { because, numbers, rule }) => {
  test('leads to a rule, and uses every number it works out', () => {
    expect(ruleIds).toContain(rule);
    for (const name of Object.keys(numbers)) expect(because).toMatch(new RegExp(`\\{${name}(\\.\\w+)?\\}`));
    expect(pieces(because, numbers).length).toBeGreaterThan(1);
  });

  test('puts into each relation what it takes, within its range, for both readers', () => {
    for (const { relation, given, inch } of Object.values(numbers)) {
      const found = relations.get(relation)!;
      for (const all of [given, { ...given, ...inch }]) {
        expect(Object.keys(all).sort(), relation).toEqual(Object.keys(found.inputs).sort());
        expect(outsideRange(found, all), relation).toBeUndefined();
      }
    }
  });

  test('types no number with a unit that a relation could give', () => {
    // Two temperatures, whose pressures are what the relation takes, stand as a pair.
    const typed = because
      .replaceAll(/−?\d+ °C \(\d+ °F\)/g, '')
      .replaceAll(/\{[^}]*\}/g, '#')
      .replaceAll('1 in #', '');
    expect(typed).not.toMatch(/\d+(\.\d+)? ?(mm|in|%|N|points|days)(?![a-z])/);
  });
});

test.each(open)('what is open about %s leads to the rule in which it matters', (_, { rule }) => {
  expect(ruleIds).toContain(rule);
});

/** Worked apart from this program, in the reference this site was checked against. */
test.each([
  ['the pitch of a bottom twice as thick doubles', { relation: 'tap-pitch', given: { h: 6, h_0: 3 } }, '2'],
  [
    'a dense wood 20 mm thick needs 33 days in moving air',
    { relation: 'moisture-ninety-time', given: { T: 20, D: 2.592 } },
    '33 days',
  ],
  ['an edge pull jams below 46 mm', { relation: 'jam-length-at-edge', given: { mu: 0.46, W: 100 } }, '46 mm'],
  [
    'ratio 5 to 3 outside is 1.8 inside',
    { relation: 'inside-ratio', given: { L: 200, W: 120, t: 10 } },
    '1.8',
  ],
] as const)('%s', (_, sum, shown) => {
  expect(workedOut(sum).mm.replaceAll(/\s/g, ' ')).toBe(shown);
});

test('a rule with common practice or memory alone counts as practice, any other as borne out', () => {
  expect(borneOut(['common practice', 'from memory'])).toBe('practice');
  expect(borneOut(['common practice', 'geometry'])).toBe('physics');
});
