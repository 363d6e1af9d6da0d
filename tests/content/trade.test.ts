/** What the trade was corrected on: numbers come from the tables, and no text slides back. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { designBox } from '../../src/box/design/design.ts';
import type { Box } from '../../src/box/subjects/inputs.ts';
import { verdicts } from '../../src/box/whole/index.ts';
import { woods } from '../../src/box/wood/woods.ts';
import { type CautionName, cautions } from '../../src/box/work/cautions.ts';
import { workOf } from '../../src/box/work/work.ts';
import { exampleBox } from '../box/reckoned-box.ts';

const content = new URL('../../content/', import.meta.url);
const texts = ['rules/', 'lessons/'].flatMap((folder) =>
  readdirSync(new URL(folder, content)).map(
    (file) => [file, readFileSync(new URL(folder + file, content), 'utf8')] as const,
  ),
);
const rule = (slug: string) => texts.find(([file]) => file === `${slug}.mdx`)![1];
const lesson = rule;
const coefficients = (id: string) => {
  const wood = woods.find((one) => one.id === id)!;
  return [wood.tangentialCoefficient!.value, wood.radialCoefficient!.value] as const;
};

describe('what quarter-sawn wood saves', () => {
  // Wood Handbook, Table 13-5: the share of the tangential coefficient that the radial one is less.
  test.each([
    ['yellow-birch', 24],
    ['black-walnut', 31],
    ['black-cherry', 49],
    ['sugar-maple', 53],
  ])('in %s is %i %%', (id, percent) => {
    const [flat, quarter] = coefficients(id);
    expect(Math.round(100 * (1 - quarter / flat))).toBe(percent);
  });

  test('is least in southern magnolia and most in overcup oak, of the woods whose two figures were read', () => {
    const saved = woods
      .filter(
        ({ radialCoefficient: r, tangentialCoefficient: t }) => r?.status === 'read' && t?.status === 'read',
      )
      .map(({ name, radialCoefficient: r, tangentialCoefficient: t }) => ({
        name,
        percent: 100 * (1 - r!.value / t!.value),
      }))
      .sort((one, other) => one.percent - other.percent);
    expect(saved.length).toBeGreaterThan(50);
    // Table 13-5: 0.00187 and 0.00230; 0.00183 and 0.00462.
    expect(saved[0]).toEqual({ name: 'southern magnolia', percent: expect.closeTo(18.7, 1) });
    expect(saved.at(-1)).toEqual({ name: 'overcup oak', percent: expect.closeTo(60.4, 1) });
    expect(rule('quarter-sawn-for-lids')).toMatch(
      /least in southern magnolia, 19 %, and most in overcup oak, 60 %/,
    );
    expect(lesson('wood-movement')).toMatch(/from 19\s% in southern magnolia to 60\s% in overcup oak/);
  });

  test('is told by wood in the rule, and nobody says that it halves or saves a fixed part', () => {
    expect(rule('quarter-sawn-for-lids')).toMatch(/24 % .*yellow birch.*31 % in walnut.*49 % in cherry/);
    for (const [file, text] of texts)
      expect(text, file).not.toMatch(/[Qq]uarter-sawn wood (halves|saves (half|a third))/);
  });

  test('is reckoned for the reader’s own wood: in walnut 31 %, in sugar maple 53 %', () => {
    const says = (species: string, ringAngle: number) =>
      verdicts(designBox({ ...exampleBox, species, ringAngle }).values).find(
        ({ check }) => check.id === 'quarter-sawn-for-lids',
      )!.because;
    expect(says('black-walnut', 0)).toMatch(/this wood moves 31\s% less/);
    expect(says('sugar-maple', 90)).toMatch(/this wood moves 53\s% less/);
  });
});

test('75 mm of solid wood is no width that need not be calculated: cherry 0.74, maple 1.06, beech 1.29 mm over 4 points', () => {
  for (const [id, moves] of [
    ['black-cherry', 0.74],
    ['sugar-maple', 1.06],
    ['american-beech', 1.29],
  ] as const)
    expect(75 * 4 * coefficients(id)[0]).toBeCloseTo(moves, 2);
  for (const [file, text] of texts)
    expect(text.replaceAll(/at least (<Size mm="75" inch="3" \/>|75 mm)/g, ''), file).not.toMatch(
      /(below|under|narrower than|up to) (about )?(<Size mm="75"|75 mm)[^.]*(seldom|generous|glued only)/,
    );
});

test('words are those of the trade in the United States', () => {
  for (const [file, text] of texts) {
    expect(text, file).not.toMatch(/\bcalms?\b|\blively\b/);
    // How a figure was read is a mark, § or ¶, told at the foot of every page; a rule names its kind of evidence.
    expect(text.replace(/^evidence: .*$/m, ''), file).not.toMatch(/from memory|second-hand/);
    const prose = text.replaceAll(/[\w-]*-saying-[\w-]*|of="[^"]*sayings"/g, '');
    expect(prose, file).not.toMatch(/\b[Ss]ayings?\b/);
  }
});

test('plywood’s movement is printed once, in the rule on glued bottoms', () => {
  expect(texts.filter(([, text]) => /0\.00021/.test(text)).map(([file]) => file)).toEqual([
    'solid-floats-plywood-may-be-glued.mdx',
  ]);
  expect(texts.filter(([, text]) => /twelfth as much/.test(text))).toEqual([]);
});

test('a rule whose range is our own choice is not marked as published', () => {
  for (const slug of [
    'quarter-sawn-for-lids',
    'solid-floats-plywood-may-be-glued',
    'long-grain-to-long-grain',
    'grain-runs-around-the-box',
  ])
    expect(rule(slug)).toMatch(/^evidence: \[(?!.*published).*\]$/m);
});

describe('cautions', () => {
  const kinds: Partial<Box>[] = [
    {},
    { kind: 'lift-off', joint: 'dovetail', headroom: 30 },
    { kind: 'sawn', joint: 'keyed-mitre', headroom: 30 },
    { pull: 'glued', bottom: 'plywood', wallsFrom: 'bookmatched', boardThickness: 40 },
  ];
  const words = (name: CautionName) => `${cautions[name].hazard} ${cautions[name].safeguard}`;

  test('stand at every step that finishes, and name vapor or air, and rags', () => {
    let finishing = 0;
    for (const box of kinds)
      for (const { id, does, caution } of workOf(designBox({ ...exampleBox, ...box }))!.steps)
        if (/\b[Ff]inish (both|the)/.test(does.join(''))) {
          finishing++;
          expect(caution, id).toBeDefined();
          expect(words(caution!), id).toMatch(/[Rr]ags/);
          expect(words(caution!), id).toMatch(/[Aa]ir the room/);
        }
    expect(finishing).toBeGreaterThan(6);
  });

  test('say that all wood dust harms, that a router table is as bad as a saw for lowered work, and that resawing binds', () => {
    expect(words('dust')).toMatch(/^All wood dust harms/);
    expect(words('stopped')).toMatch(/router table is the same hazard/);
    expect(words('resaw')).toMatch(/pinches and binds/);
    expect(words('plywood')).toMatch(/several light passes/);
    expect(rule('groove-inside-one-finger')).toMatch(/^cautions: .*\bstopped\b/m);
    expect(rule('cut-oversize-and-rest')).toMatch(/^cautions: .*\bresaw\b/m);
    expect(rule('bottom-thickness')).toMatch(/^cautions: .*\bplywood\b/m);
  });

  test('stand in every rule about a finish', () => {
    for (const [file, text] of texts)
      if (/^stage: surface and finish$/m.test(text))
        expect(text, file).toMatch(/^cautions: .*\brags\b|cautions:[\s\S]*vapor/m);
    expect(words('rags')).toMatch(/vapors/);
  });
});
