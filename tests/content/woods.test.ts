/** The joined woods against the tables they come from. */
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allWoods } from '../../src/box/wood/all-woods.ts';
import { pack, unpack } from '../../src/box/wood/packed-woods.ts';
import { woodById, woods } from '../../src/box/wood/woods.ts';
import { readTable } from '../../src/build/tables.ts';
import { movingWoods, woodsTable } from '../../src/build/woods-table.ts';
import { isRefused } from '../../src/calc/core/refusal.ts';
import { movement, widthFigures } from '../../src/calc/movement/movement.ts';

/** Table 13-5 heads these as a kind of white oak; Tables 4-3 and 5-3 as an oak of that group. */
const headings: Readonly<Record<string, string>> = {
  'White oak, live': 'Oak, live (white oak group)',
  'White oak, overcup': 'Oak, overcup (white oak group)',
};
const byTableName = new Map(allWoods.map((wood) => [wood.tableName, wood]));

/** Printed in Table 13-5 in one row with a neighbor: the figures are the neighbor's too. */
const grouped = ['green ash', 'sweet birch', 'cedar elm'];

test('every printed movement coefficient is loaded exactly and is marked as read, save those of a group', () => {
  let checked = 0;
  for (const row of readTable('dimensional-change-coefficients')) {
    const wood = byTableName.get(headings[row.species!] ?? row.species!)!;
    for (const [figure, printed] of [
      [wood.radialCoefficient, row.cr_fraction_per_pct_mc],
      [wood.tangentialCoefficient, row.ct_fraction_per_pct_mc],
    ] as const) {
      if (!printed) continue;
      if (grouped.includes(wood.name)) {
        expect([wood.name, figure?.status]).toEqual([wood.name, 'derived']);
        expect(figure!.source).toMatch(/shrinkage.*group of neighbors/);
        continue;
      }
      expect([wood.name, figure?.value, figure?.status]).toEqual([wood.name, Number(printed), 'read']);
      checked++;
    }
  }
  // 56 woods with both figures, black willow with the radial one (Wood Handbook Table 13-5); of those, three are printed
  // in one row with a neighbor and have a shrinkage of their own.
  expect(checked).toBe(113 - 2 * grouped.length);
});

test('every printed shrinkage is loaded exactly and is marked as read', () => {
  for (const row of readTable('shrinkage-green-to-ovendry')) {
    const wood = byTableName.get(row.species!)!;
    for (const [figure, printed] of [
      [wood.radialShrinkage, row.radial_pct],
      [wood.tangentialShrinkage, row.tangential_pct],
      [wood.volumetricShrinkage, row.volumetric_pct],
    ] as const)
      if (printed) expect(figure).toMatchObject({ value: Number(printed), status: 'read' });
  }
});

test('black walnut carries the printed figures, converted to MPa and N where the table prints kPa', () => {
  const walnut = allWoods.find(({ id }) => id === 'black-walnut')!;
  expect(walnut).toMatchObject({
    name: 'black walnut',
    group: 'hardwood',
    isGroup: false,
    lowFiberSaturation: false,
    radialCoefficient: {
      value: 0.0019,
      status: 'read',
      source: 'Wood Handbook (2010), Table 13-5, p. 13-16',
    },
    tangentialCoefficient: { value: 0.00274, status: 'read' },
    tangentialShrinkage: { value: 7.8, status: 'read', source: 'Wood Handbook (2010), Table 4-3, p. 4-6' },
    specificGravity: { value: 0.55 },
    modulusOfElasticity: { value: 11600 },
    tensionPerpendicular: { value: 4.8 },
    shearParallel: { value: 9.4 },
    sideHardness: { value: 4500 },
  });
});

test('every figure says how it is known and names a table or a page', () => {
  for (const wood of allWoods)
    for (const value of Object.values(wood))
      if (typeof value === 'object') {
        expect(value.source).toMatch(
          /^(derived from the (shrinkage|coefficient) in )?Wood Handbook \(\d{4}\), /,
        );
        expect(value.source).toMatch(/Table \d+-\d|p\. \d+-\d/);
        expect(value.source.startsWith('derived')).toBe(value.status === 'derived');
        expect(value.source.endsWith('from memory')).toBe(value.status === 'from memory');
      }
});

test('woods of low fiber saturation get no figure that assumes 30 %', () => {
  const low = allWoods.filter((wood) => wood.lowFiberSaturation);
  expect(low.map((wood) => wood.id).sort()).toEqual([
    'african-mahogany',
    'northern-white-cedar',
    'old-growth-redwood',
    'teak',
    'true-mahogany',
    'western-redcedar',
    'young-growth-redwood',
  ]);
  for (const wood of low)
    for (const value of Object.values(wood))
      if (typeof value === 'object') expect(value.status).not.toBe('derived');
});

test('a commercial group is marked, and borrows nothing from one of its species', () => {
  const groups = allWoods.filter((wood) => wood.isGroup);
  expect(groups.map((wood) => wood.name).sort()).toEqual([
    'commercial red oak',
    'commercial white oak',
    'true hickory',
    'water, laurel and willow red oaks',
  ]);
  for (const wood of groups) expect(wood.specificGravity ?? wood.modulusOfElasticity).toBeUndefined();
});

test('the black oak of Table 13-5, printed with the California figures, is not the eastern black oak of Table 5-3', () => {
  expect(woodById('black-oak-california-figures')?.modulusOfElasticity).toBeUndefined();
  expect(byTableName.get('Oak, black (red oak group)')?.tangentialCoefficient).toBeUndefined();
});

test('western white pine gets the specific gravity of the inch-pound table, because the metric one is a misprint', () => {
  expect(woodById('western-white-pine')?.specificGravity).toMatchObject({
    value: 0.38,
    source: 'Wood Handbook (2010), Table 5-3b, p. 5-13',
  });
});

test('shrinkage derived here agrees with the table of derived values', () => {
  for (const row of readTable('derived-movement').filter(
    (one) => one.status === 'derived from coefficient',
  )) {
    const wood = byTableName.get(row.species!)!;
    const figure = row.quantity!.startsWith('radial') ? wood.radialShrinkage : wood.tangentialShrinkage;
    expect(figure).toMatchObject({ value: Number(row.value), status: 'derived' });
  }
  // By hand: 3000 · 0.00369 / (1 + 20 · 0.00369) = 11.07 / 1.0738 = 10.31.
  expect(woodById('commercial-red-oak')?.tangentialShrinkage?.value).toBe(10.3);
});

test('the woods of a box have both coefficients; all woods are more', () => {
  for (const wood of woods) {
    expect(wood.radialCoefficient && wood.tangentialCoefficient).toBeDefined();
    expect(wood.tangentialCoefficient!.value).toBeGreaterThan(wood.radialCoefficient!.value);
  }
  expect(woods).toHaveLength(104);
  expect(allWoods).toHaveLength(159);
  expect(woodById('no-such-wood')).toBeUndefined();
});

test('names and ids are unlike each other, and read as running text', () => {
  expect(new Set(allWoods.map((wood) => wood.id)).size).toBe(allWoods.length);
  expect(new Set(allWoods.map((wood) => wood.name)).size).toBe(allWoods.length);
  for (const { id } of allWoods) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
  expect(woodById('coast-douglas-fir')?.name).toBe('coast Douglas-fir');
  expect(woodById('live-oak')?.name).toBe('live oak');
});

test('packing loses no digit and keeps the woods of a box under 3.5 kB compressed', () => {
  const all = woodsTable();
  expect(unpack(pack(all))).toEqual(all);
  expect(gzipSync(JSON.stringify(pack(movingWoods(all)))).length).toBeLessThan(3500);
});

test('packing refuses a figure with more digits than it keeps', () => {
  const [wood] = woods;
  const finer = { ...wood!, radialCoefficient: { ...wood!.radialCoefficient!, value: 0.001234 } };
  expect(() => pack([finer])).toThrow('more digits');
});

// Where a figure of neighbors met a wood's own shrinkage, movement fell by up to half a millimeter as moisture rose.
test('no wood shrinks where its moisture rises, whatever method the moisture asks for', () => {
  // The two published methods part by up to 0.045 mm in 100 mm where one takes over from the other, at 6 and 14 %.
  const seam = 0.05;
  const moisture = fc.double({ min: 0, max: 30, noNaN: true });
  for (const wood of allWoods)
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 14, noNaN: true }),
        fc.tuple(moisture, moisture),
        fc.constantFrom(0, 30, 45, 90),
        (from, ends, angle) => {
          const [less, more] = [Math.min(...ends), Math.max(...ends)].map((to) =>
            movement(100, from, to, widthFigures(wood, angle)),
          );
          if (isRefused(less!) || isRefused(more!)) return;
          expect(more!.change, `${wood.name} from ${from} to ${ends}`).toBeGreaterThan(less!.change - seam);
        },
      ),
      { numRuns: 60, examples: [5.95, 6, 14, 14.05].map((to) => [14, [to, to + 0.05], 0]) },
    );
});
