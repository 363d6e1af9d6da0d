/** The notes of a bottom: against a separate calculation, the textbook's square plate, and a grid of finite differences. */
import { describe, expect, test } from 'vitest';
import { readTable } from '../../../src/build/tables.ts';
import type { Panel } from '../../../src/calc/bottom/bottom.ts';
import { firstTapFrequency } from '../../../src/calc/bottom/bottom.ts';
import { lowestNoteHeld, lowestNotes, noteOfPanel } from '../../../src/calc/bottom/modes.ts';
import { panelOf, panelWoods } from '../../../src/calc/bottom/panel-woods.ts';
import { gridNotes, type Plate } from '../../reference/plate-grid.ts';

const walnut = (h: number, cut: 'flat' | 'quarter' = 'flat') => panelOf('walnut', cut, { a: 200, b: 120, h });

/** Bending stiffnesses by their definitions, in N m: the way round that the relations do not take. */
function plateOf({ h, a, b, rho, E_x, E_y, G, nu }: Panel): Plate {
  const cubed = (h / 1000) ** 3 / 12;
  const nuAcross = (nu * E_y) / E_x;
  const along = (E_x * 1e6 * cubed) / (1 - nu * nuAcross);
  const across = (E_y * 1e6 * cubed) / (1 - nu * nuAcross);
  return {
    along,
    across,
    mixed: nuAcross * along + 2 * G * 1e6 * cubed,
    a: a / 1000,
    b: b / 1000,
    mass: (rho * h) / 1000,
  };
}

describe('the notes of a walnut bottom 200 by 120 mm', () => {
  // A separate calculation of the same theory, Hz.
  test.each([
    [3, 238, 273],
    [4.5, 356, 410],
    [6, 475, 546],
    [8, 633, 728],
  ])('%d mm thick begin where they should', (h, flat, quarter) => {
    expect(Math.abs(lowestNotes(walnut(h))[0]!.f / flat - 1)).toBeLessThan(0.003);
    expect(Math.abs(lowestNotes(walnut(h, 'quarter'))[0]!.f / quarter - 1)).toBeLessThan(0.003);
  });

  test('are a dozen of different shapes, from low to high, and the first is the lowest note of the panel', () => {
    const notes = lowestNotes(walnut(3));
    expect(notes).toHaveLength(12);
    expect(new Set(notes.map(({ m, n }) => `${m}×${n}`)).size).toBe(12);
    expect(notes.map(({ f }) => f)).toEqual(notes.map(({ f }) => f).sort((one, other) => one - other));
    expect(notes[0]!.f).toBeCloseTo(firstTapFrequency.compute(walnut(3)), 9);
  });

  test.each(['flat', 'quarter'] as const)(
    'come out of a grid of finite differences to within one percent (%s-sawn)',
    (cut) => {
      const grid = gridNotes(plateOf(walnut(3, cut)), 'carried', 12);
      lowestNotes(walnut(3, cut)).forEach(({ f }, i) => {
        expect(Math.abs(f / grid[i]! - 1), `note ${i + 1}`).toBeLessThan(0.01);
      });
    },
  );

  test('with edges held fast begin less than one percent above what the grid gives, and 1.8 to 2.3 times as high', () => {
    const [grid] = gridNotes(plateOf(walnut(3)), 'held', 1);
    const held = lowestNoteHeld.compute(walnut(3));
    expect(held / grid!).toBeGreaterThan(0.999);
    expect(held / grid!).toBeLessThan(1.01);
    // The range that handbooks give, from memory.
    const raised = held / lowestNotes(walnut(3))[0]!.f;
    expect(raised).toBeGreaterThan(1.8);
    expect(raised).toBeLessThan(2.3);
  });
});

describe('a square plate alike both ways', () => {
  const nu = 0.3;
  const even = { a: 150, b: 150, h: 3, rho: 600, E_x: 10000, E_y: 10000, G: 10000 / 2.6, nu };
  const first = noteOfPanel.compute({ ...even, m: 1, n: 1 });

  test('has notes in the ratios 2 : 5 : 5 : 8 : 10 : 10', () => {
    const ratios = lowestNotes(even, 6).map(({ f }) => (2 * f) / first);
    [2, 5, 5, 8, 10, 10].forEach((ratio, i) => {
      expect(ratios[i]).toBeCloseTo(ratio, 9);
    });
  });

  test('has the printed numbers: 19.74 with edges carried, 35.99 with edges held', () => {
    // Leissa, Vibration of Plates: omega a² √(m/D). From memory.
    const D = (10000e6 * 0.003 ** 3) / 12 / (1 - nu ** 2);
    const number = (f: number) => 2 * Math.PI * f * 0.15 ** 2 * Math.sqrt(1.8 / D);
    expect(number(first)).toBeCloseTo(19.74, 2);
    expect(number(lowestNoteHeld.compute(even)) / 35.99).toBeGreaterThan(1);
    expect(number(lowestNoteHeld.compute(even)) / 35.99).toBeLessThan(1.005);
  });
});

test('a long narrow panel sounds like a strip carried along its two long sides', () => {
  // A bar: f = (π/2) √(D/m)/b², with D across the grain. By hand for 100 mm: 3 mm walnut 714.6 MPa, 1.848 kg/m².
  const { E_x, E_y, nu, ...rest } = walnut(3);
  const long = { ...rest, E_x, E_y, nu, a: 60000, b: 100 };
  const D = (E_y * 1e6 * 0.003 ** 3) / 12 / (1 - (nu ** 2 * E_y) / E_x);
  const bar = ((Math.PI / 2) * Math.sqrt(D / 1.848)) / 0.1 ** 2;
  expect(noteOfPanel.compute({ ...long, m: 1, n: 1 })).toBeCloseTo(bar, 2);
});

test.each(Object.values(panelWoods))('the figures of $name stand in the tables', (wood) => {
  const row = (table: string) => readTable(table).find(({ species }) => species === wood.species)!;
  const ratios = row('elastic-ratios');
  const strength = row('mechanical-properties');
  const numbers = (...columns: readonly string[]) => columns.map((column) => Number(ratios[column]));
  const { flat, quarter } = wood;
  expect(numbers('et_over_el', 'glt_over_el', 'nu_lt')).toEqual([flat.across, flat.shear, flat.nu]);
  expect(numbers('er_over_el', 'glr_over_el', 'nu_lr')).toEqual([quarter.across, quarter.shear, quarter.nu]);
  expect(Number(strength.specific_gravity_12pct)).toBe(wood.gravity);
  expect(Number(strength.moe_mpa)).toBe(wood.bending);
});
