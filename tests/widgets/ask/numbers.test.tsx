/** One number has one maker: what an answer says of my box is what the build sheet prints, for any box. */
import fc from 'fast-check';
import type { ComponentChild } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { exampleBox } from '../../../src/box/subjects/example.ts';
import { plainly } from '../../../src/box/work/say.ts';
import type { Entry } from '../../../src/widgets/ask/entry.ts';
import { type Own, ownOf } from '../../../src/widgets/ask/own.ts';
import { ownAmounts } from '../../../src/widgets/ask/own-amounts.ts';
import { ownNumbers } from '../../../src/widgets/ask/own-numbers.ts';
import { ownParts } from '../../../src/widgets/ask/own-parts.ts';
import { ownWhole } from '../../../src/widgets/ask/own-whole.ts';
import { ownWork } from '../../../src/widgets/ask/own-work.ts';
import { shownOf } from '../../../src/widgets/ask/shown.ts';
import { textsOf } from '../../../src/widgets/ask/texts.ts';
import BuildSheet from '../../../src/widgets/build-sheet/BuildSheet.tsx';
import { Amounts, GapTable, SetUps } from '../../../src/widgets/build-sheet/WorkTables.tsx';
import { PartsTable } from '../../../src/widgets/my-box/PartsTable.tsx';
import { anyBox } from '../../box/any-box.ts';
import { askFile } from './site-words.ts';

const systems = ['mm', 'inch'] as const;

/** Rows or lines of a drawn part of the sheet, as a reader of these units sees them. */
function rowsOf(part: ComponentChild, of: 'tr' | 'li', system: 'mm' | 'inch'): readonly string[] {
  const other = system === 'mm' ? 'inch' : 'mm';
  const html = renderToString(part as never).replaceAll(
    new RegExp(`<span class="number ${other}">[^<]*</span>`, 'g'),
    '',
  );
  const cells = html.replaceAll(/<\/?t[hd][^>]*>/g, '|');
  return [...cells.matchAll(new RegExp(`<${of}[^>]*>(.*?)</${of}>`, 'g'))].map(([, row]) =>
    row!.replaceAll(/<[^>]*>/g, ''),
  );
}

const entriesOf = (own: Own) =>
  new Map(
    [...ownParts(own), ...ownWhole(own), ...ownWork(own), ...ownAmounts(own)].map((entry) => [
      entry.id,
      entry,
    ]),
  );
const numberOf = (entry: Entry | undefined, system: 'mm' | 'inch') => {
  const number = entry?.number?.();
  return number && textsOf(number)[system];
};

test('the size of a part is the one in the cut list, and gaps, set-ups and amounts are those of their tables', () => {
  let compared = 0;
  fc.assert(
    fc.property(anyBox, (box) => {
      const own = ownOf(box);
      const { design, work } = own;
      const entries = entriesOf(own);
      for (const system of systems) {
        const cutList = rowsOf(<PartsTable design={design} />, 'tr', system).slice(1);
        design.parts.forEach(({ name }, index) => {
          const finished = cutList[index]!.split('|').filter(Boolean)[2];
          const id = entries.has(`own:${name}-${index}`) ? `own:${name}-${index}` : `own:${name}`;
          expect(numberOf(entries.get(id), system)).toBe(finished);
          const sides = ['length', 'width', 'thickness'] as const;
          expect(sides.map((side) => numberOf(entries.get(`${id}.${side}`), system)).join(' × ')).toBe(
            finished,
          );
          compared += 1;
        });
        if (!work) continue;
        const gaps = rowsOf(<GapTable gaps={work.gaps} />, 'tr', system).slice(1);
        gaps.forEach((row, index) => {
          const entry = entries.get(`own:gap-${index}`)!;
          expect(row.split('|').filter(Boolean).slice(0, 2)).toEqual([entry.title, numberOf(entry, system)]);
        });
        const setUps = rowsOf(<SetUps setUps={work.setUps} />, 'tr', system).slice(1);
        work.setUps.forEach(({ cut }, index) => {
          const title = `set-up: ${plainly(cut, 'mm')}`;
          const entry = [...entries.values()].find((one) => one.title === title);
          expect(setUps[index]!.split('|').filter(Boolean)[1]).toContain(numberOf(entry, system));
        });
        const [glue, clamps, finish] = rowsOf(<Amounts amounts={work.amounts} />, 'li', system);
        expect(glue).toContain(`Glue: ${numberOf(entries.get('own:glue'), system)} on`);
        expect(clamps).toContain(`takes ${numberOf(entries.get('own:clamps'), system)} by`);
        expect(finish).toContain(`Finish: ${numberOf(entries.get('own:finish'), system)} for`);
      }
    }),
    { numRuns: 120 },
  );
  expect(compared).toBeGreaterThan(500);
});

test('sizes, weight, volume and boards of the example are those in the head and the board of its sheet', () => {
  const sheet = renderToString(<BuildSheet sources={{}} />);
  const entries = entriesOf(ownOf(exampleBox));
  for (const system of systems) {
    const other = system === 'mm' ? 'inch' : 'mm';
    const text = sheet
      .replaceAll(new RegExp(`<span class="number ${other}">[^<]*</span>`, 'g'), '')
      .replaceAll(/<[^>]*>/g, '');
    for (const [id, before] of [
      ['own:outside', 'Outside '],
      ['own:inside', 'inside '],
      ['own:insideVolume', ', '],
      ['own:mass', ''],
      ['own:board', ''],
    ] as const)
      expect(text, id).toContain(`${before}${numberOf(entries.get(id), system)}`);
  }
});

describe('a number that a check judges', () => {
  test('is the number the check measured, for any box', () => {
    fc.assert(
      fc.property(anyBox, (box) => {
        const own = ownOf(box);
        for (const entry of [...ownNumbers(own), ...ownParts(own)]) {
          const verdict = own.verdicts.find(({ check }) => check.id === entry.check);
          const [first] = entry.number?.() ?? [];
          if (!verdict || typeof first !== 'object' || verdict.state === 'unknown') continue;
          expect(first.value, entry.id).toBeCloseTo(verdict.measured, 9);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('a rule answers with what its first check measures in my box', () => {
    const own = ownOf(exampleBox);
    const entry = askFile.entries.find(({ id }) => id === 'rule:wall-thickness')!;
    const { number, verdict } = shownOf(entry, own, () => undefined);
    expect(textsOf(number!).mm).toBe('8\u00a0mm');
    expect(verdict!.state).toBe('usual');
  });

  test('a trouble of hinged lids has a number for a box with hinges, and for no other', () => {
    const entry = askFile.entries.find(({ id }) => id === 'trouble:lid-springs-open')!;
    const shown = (kind: 'sliding' | 'sawn') =>
      shownOf(entry, ownOf({ ...exampleBox, kind }), () => undefined).number;
    expect(shown('sliding')).toBeUndefined();
    expect(shown('sawn')).toBeDefined();
  });
});
