/** The keys, reckoned again by mathjs from the trade's own formulas and from the printed table of woods and air. */
import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { exercises } from '../../src/exercises/index.ts';
import { INCH } from '../../src/units/index.ts';
import { systems, tasksOf } from './seeds.ts';

const math = create(all!, {});

/** Wood Handbook Table 13-5, change per 1 % of moisture content: across and along the rings. Read there, not from the code. */
const table: Readonly<Record<string, readonly [across: number, along: number]>> = {
  'red-alder': [0.00151, 0.00256],
  'white-ash': [0.00169, 0.00274],
  'american-basswood': [0.0023, 0.0033],
  'american-beech': [0.0019, 0.00431],
  'yellow-birch': [0.00256, 0.00338],
  butternut: [0.00116, 0.00223],
  'black-cherry': [0.00126, 0.00248],
  'red-maple': [0.00137, 0.00289],
  'silver-maple': [0.00102, 0.00252],
  'sugar-maple': [0.00165, 0.00353],
  'black-walnut': [0.0019, 0.00274],
};
/** What wood settles to at 21 °C, % by relative humidity: the sorption equation, reckoned outside the program to one decimal. */
const settles: Readonly<Record<number, number>> = {
  30: 6.2,
  35: 6.9,
  40: 7.7,
  45: 8.5,
  50: 9.2,
  55: 10.1,
  60: 11,
  65: 12,
  70: 13.1,
};

/** For each exercise and number asked, in the order of its lines: the formula with the names of its drawn values. */
const formulas: Readonly<Record<string, readonly string[]>> = {
  e1: ['length + 2 wall', 'width + 2 wall'],
  e2: ['below + bottom + inside + lid + above'],
  // The odd number that no other odd number is nearer than.
  e3: ['2 round((height / finger - 1) / 2) + 1', '(2 round((height / finger - 1) / 2) + 1) * finger'],
  e4: ['width * C * (M_to - M_from)'],
  e5: ['width - width * C * (M_to - M_from) - native(0.3, 0.012)'],
  e6: ['2 (length + width) + 3 * kerf / cos(45 deg) + native(12, 0.5)'],
  e7: ['wall * sqrt(2) * sin(8 * error * pi / 180)'],
  e8: ['difference * sqrt(length^2 + width^2) / (2 length)'],
  e9: ['wall - depth'],
  e10: ['E + share * (width * C * (up + down) + room)'],
  e11: ['(fingers - 1) * wall^2', 'fingers * finger * sqrt(2 * wall^2)'],
  e12: ['abs(width * C * (M_to - M_from))'],
  e13: ['(width - 2 wall) * long / short + 2 wall', '((width - 2 wall) * long / short + 2 wall) / width'],
  e14: ['100 (1 - (length - 2 wall) * (width - 2 wall) * inside / (length * width * height))'],
  e15: ['width * up * (along * cos(slant deg)^2 + across * sin(slant deg)^2)'],
  e16: ['2 wall + 4 planing + kerf'],
  e17: ['days * (board / offcut)^2'],
  e18: ['100 * ((wall - depth) / wall)^2', '(thicker / lip)^2'],
  e19: ['(fingers - 1) / 2', 'error * (fingers - 1) / 2'],
  e20: ['sag * (before / after)^3', '100 * (before / after)^2'],
  e21: ['height + kerf', 'height - lid'],
  e22: ['4 * (fingers - 1)', '(4 * (fingers - 1) * spread + steps * each) / 60'],
  e23: ['rock / 2', 'lip - rock / 2'],
  e24: [
    'width * C * (M_to - M_from) + native(0.3, 0.012)',
    'width * C * (M_to - M_dry) + native(0.3, 0.012)',
  ],
  e25: ['2 coats * film', 'play - 2 coats * film'],
};
/** E10: free play, what stays in, and the share of the play that one edge can lose, by kind of panel. */
const panels: Readonly<Record<string, readonly [room: number, E: number, share: number]>> = {
  'held mm': [0.5, 3, 0.5],
  'loose mm': [0.5, 1.5, 1],
  'lid mm': [0.3, 2, 1],
  'held inch': [0.02 * INCH, INCH / 8, 0.5],
  'loose inch': [0.02 * INCH, INCH / 16, 1],
  'lid inch': [0.012 * INCH, (3 * INCH) / 32, 1],
};

describe.each(systems)('in %s', (system) => {
  test.each(exercises.map(({ id }) => id))(
    'the keys of %s are those of the formula, a thousand times',
    (id) => {
      const codes = formulas[id]!.map((formula) => math.compile(formula));
      for (const { values, lines } of tasksOf(id, system)) {
        const [across, along] = table[String(values.wood)] ?? [];
        const [room, E, share] = panels[`${values.kind} ${system}`] ?? [];
        const scope = {
          ...values,
          C: values.cut === 'quarter-sawn' ? across : along,
          M_from: settles[Number(values.from)],
          M_to: settles[Number(values.to)],
          M_dry: settles[Number(values.dry)],
          across,
          along,
          room,
          E,
          share,
          native: (mm: number, inch: number) => (system === 'mm' ? mm : inch * INCH),
        };
        const asked = lines.filter((line) => line.asked && line.gives.type === 'number');
        expect(asked.length).toBe(codes.length);
        asked.forEach(({ gives }, at) => {
          const expected = codes[at]!.evaluate(scope) as number;
          expect(Math.abs(Number(gives.key) - expected)).toBeLessThanOrEqual(1e-4 * Math.max(1, expected));
        });
      }
    },
  );

  test('the choices of e8 follow the limits of the difference: 0.5 and 1 mm, 1/64 and 1/32 in', () => {
    for (const { values, lines } of tasksOf('e8', system)) {
      const parts = Number(values.difference) / (system === 'mm' ? 0.5 : INCH / 64);
      const wanted = parts <= 1.001 ? 'good' : parts <= 2.001 ? 'accepted' : 'correct';
      expect(lines.at(-1)!.gives.key).toBe(wanted);
    }
  });

  test('e9 stops the groove in the walls that have a finger at its height, counted up from the lower edge', () => {
    const seen = new Set<unknown>();
    for (const { values, lines } of tasksOf('e9', system)) {
      const { first, below, groove, finger } = values as Record<string, number | string>;
      let walls = first;
      let edge = Number(finger);
      while (edge < Number(below) + 1e-6) {
        walls = walls === 'ends' ? 'sides' : 'ends';
        edge += Number(finger);
      }
      expect(Number(below) + Number(groove)).toBeLessThanOrEqual(edge + 1e-6);
      expect(lines[0]!.gives.key).toBe(walls);
      seen.add(walls);
    }
    expect(seen.size).toBe(2);
  });

  test('e12: a free lid jams in damper air and gets loose in drier, a glued bottom bursts corners or cracks', () => {
    const wanted = { 'lid up': 'jams', 'lid down': 'loose', 'glued up': 'bursts', 'glued down': 'cracks' };
    const seen = new Set<unknown>();
    for (const { values, lines } of tasksOf('e12', system)) {
      const way =
        `${values.part} ${Number(values.to) > Number(values.from) ? 'up' : 'down'}` as keyof typeof wanted;
      expect(lines[3]!.gives.key).toBe(wanted[way]);
      seen.add(way);
    }
    expect(seen.size).toBe(4);
  });
});

/** What is chosen last in the exercises of one lesson each, worked out from the drawn numbers by hand. */
const chosen: Readonly<Record<string, (v: Record<string, number>, inch: boolean) => string>> = {
  e14: ({ length, wall }) => (20 * wall! > length! ? 'thick' : 30 * wall! < length! ? 'thin' : 'usual'),
  // Rough walls laid side by side, a saw cut before each but the first.
  e16: ({ wall, planing, kerf, board }) => {
    const rough = wall! + planing! + planing!;
    let [walls, thick] = [0, rough];
    while (thick <= board! + 1e-9) {
      walls++;
      thick += kerf! + rough;
    }
    return ['none', 'one', 'two', 'three'][walls]!;
  },
  e22: ({ fingers, spread, steps, each, open }) =>
    (4 * fingers! - 4) * spread! + steps! * each! > 60 * open! ? 'slower' : 'begin',
  e23: ({ rock, lip, least }) => (2 * lip! - rock! < 2 * least! ? 'leave' : 'rub'),
  e25: ({ coats, film, play }, inch) =>
    play! - coats! * film! - coats! * film! < (inch ? 0.008 * INCH : 0.2) ? 'mask' : 'coat',
};

describe.each(Object.entries(chosen))('%s', (id, by) => {
  test.each(systems)('chooses as the numbers say, and not always the same, in %s', (system) => {
    const seen = new Set<string>();
    for (const { values, lines } of tasksOf(id, system)) {
      const wanted = by(values as Record<string, number>, system === 'inch');
      expect(lines.at(-1)!.gives.key).toBe(wanted);
      seen.add(wanted);
    }
    expect(seen.size).toBeGreaterThan(1);
  });
});

test('worked examples from outside come out: a 219 mm by 86 mm pencil box and its lid of 74.8 mm', async () => {
  const { taskWith } = await import('../../src/exercises/core/task.ts');
  const { byId } = await import('./seeds.ts');
  const keyOf = (id: string, values: Record<string, number | string>) =>
    taskWith(byId(id), values, 'mm').lines.filter(({ asked }) => asked)[0]!.gives.key;
  expect(keyOf('e1', { length: 203, width: 70, wall: 8 })).toBe(219);
  const lid = { wood: 'black-cherry', cut: 'quarter-sawn', width: 75.4, longer: 40, from: 45, to: 65 };
  expect(keyOf('e5', lid)).toBeCloseTo(74.77, 2);
  // 102 mm (4 in) and 9.5 mm (3/8): 11 fingers of 9.5 make 104.5 mm.
  expect(keyOf('e3', { height: 102, finger: 9.5 })).toBe(11);
  // T3: walls of 10 mm, 0.25° at each cut: 0.49 mm. T4: 250 by 150, 1 mm: 0.58 mm.
  expect(keyOf('e7', { wall: 10, error: 0.25 })).toBeCloseTo(0.49, 2);
  expect(keyOf('e8', { length: 250, width: 150, difference: 1 })).toBeCloseTo(0.58, 2);
  // 90 mm high, walls of 10, fingers of 6: 1400 mm² of cheeks and about 1270 mm² of miter.
  expect(keyOf('e11', { fingers: 15, finger: 6, wall: 10 })).toBe(1400);
  // Flat-sawn cherry 150 mm wide, 3 points up, 2 down, held in the middle: 4.2 mm.
  const bottom = { kind: 'held', wood: 'black-cherry', cut: 'flat-sawn', width: 150, up: 3, down: 2 };
  expect(keyOf('e10', bottom)).toBeCloseTo(4.18, 2);
  // The rules' own examples: 70 mm and a kerf of 3.2 are glued up 73.2 mm high; corners of fifteen fingers have 56 faces;
  // a rock of 0.4 mm costs 0.2 mm; three coats on both faces take 0.18 mm; 10 mm in 8 days, so 20 mm in 32.
  expect(keyOf('e21', { height: 70, lid: 20, kerf: 3.2 })).toBeCloseTo(73.2, 6);
  expect(keyOf('e22', { fingers: 15, spread: 8, steps: 10, each: 20, open: 8 })).toBe(56);
  expect(keyOf('e23', { rock: 0.4, lip: 3.5, least: 3 })).toBeCloseTo(0.2, 6);
  expect(keyOf('e25', { coats: 3, film: 0.03, play: 0.5 })).toBeCloseTo(0.18, 6);
  expect(keyOf('e17', { offcut: 10, board: 20, days: 8 })).toBeCloseTo(32, 6);
});
