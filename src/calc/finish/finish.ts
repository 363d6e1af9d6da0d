/**
 * A finish is one more resistance on the way of moisture into the wood: it delays, it does not stop.
 *
 *   S = 1 / (1/S_air + r)
 *
 * Symbols: S surface coefficient (mm/day), S_air the same of the air film alone, r resistance of the finish (day/mm).
 *
 * How r was found: the published effectiveness is 100 (gain bare − gain coated)/gain bare, after 1, 7 and 14
 * days at 27 °C in air taken from 30 to 90 % humidity, ponderosa pine. The series of `diffusion-series.ts` with
 * both faces coated gives the same figure for any r; r is the one whose worst miss is least. Taken with it:
 * thickness 15.9 mm (from memory), D = 2e-10 m²/s, S_air = 3e-7 m/s. Half that D moves r by under 20 %, except
 * for films that hardly resist. In another wood or colder air the same film has another r, of the same order.
 */
import { fractionDone } from '../air/diffusion-series.ts';
import { relation } from '../core/relation.ts';

/** The test block that resistances were fitted on. mm, mm²/day, mm/day. */
export const TEST_BLOCK = { thickness: 15.9, diffusion: 17.28, surface: 25.92 } as const;

export { ROOM_SURFACE } from '../air/slab.ts';

/** A finish as the published table names it. */
export interface Finish {
  readonly name: string;
  readonly coats: number;
  /** r, day/mm */
  readonly resistance: number;
  /** Figures it was fitted to: `three` reproduces 1, 7 and 14 days within 5 points, `one` knows 14 days only and proves nothing. */
  readonly figures: 'three' | 'one';
  /** Published effectiveness, %: after 1, 7 and 14 days, or after 14 days alone. */
  readonly published: readonly number[];
}

const fitted = (
  figures: Finish['figures'],
  rows: readonly (readonly [name: string, coats: number, resistance: number, ...published: number[]])[],
): Finish[] =>
  rows.map(([name, coats, resistance, ...published]) => ({ name, coats, resistance, figures, published }));

/** Finishes a box maker might use, from the published table (Wood Handbook 2010, Table 16-3, and Feist, Little and Wennesheimer 1985). */
export const finishes: readonly Finish[] = [
  ...fitted('three', [
    ['Linseed oil', 1, 0.0345, 12, 0, 0],
    ['Linseed oil', 2, 0.0674, 22, 0, 0],
    ['Linseed oil', 3, 0.117, 33, 2, 0],
    ['Urethane varnish', 1, 0.273, 55, 10, 2],
    ['Urethane varnish', 2, 0.983, 83, 43, 23],
    ['Urethane varnish', 3, 1.93, 90, 64, 44],
    ['Urethane varnish', 4, 2.3, 91, 68, 51],
    ['Urethane varnish', 5, 2.77, 93, 72, 57],
    ['Urethane varnish', 6, 3.32, 93, 76, 62],
    ['Polyurethane paint, gloss', 1, 2.06, 91, 66, 44],
    ['Polyurethane paint, gloss', 2, 3.56, 94, 79, 62],
    ['Polyurethane paint, gloss', 3, 5.7, 96, 86, 74],
    ['Lacquer', 2, 0.489, 70, 22, 8],
    ['Shellac', 2, 1, 84, 43, 20],
    ['Spar varnish', 2, 0.797, 80, 36, 15],
    ['Enamel paint, gloss', 2, 1.98, 91, 64, 43],
    ['Polyurethane varnish, clear', 2, 2.04, 90, 66, 46],
    ['Epoxy, two-part, clear', 2, 13, 98, 93, 88],
  ]),
  ...fitted('one', [
    ['Paraffin wax, dipped', 1, 34.2, 95],
    ['Paraffin wax, brushed', 1, 4.56, 69],
    ['Epoxy finish, clear (two-component)', 3, 18.5, 91],
    ['Polyurethane finish, clear (two-component)', 3, 4.05, 66],
    ['Shellac', 3, 1.84, 42],
    ['Spar varnish (soya alkyd)', 3, 1.27, 30],
    ['Nitrocellulose lacquer', 3, 0.57, 10],
    ['Furniture wax', 3, 0, 0],
  ]),
];

/** Rows of the same table that no single resistance reproduces within 5 points, so they have none here. They let go faster than the picture allows. */
export const notFitting: readonly Pick<Finish, 'name' | 'coats' | 'published'>[] = [
  { name: 'Tung oil', coats: 2, published: [46, 2, 0] },
  { name: 'Water repellent', coats: 2, published: [46, 2, 0] },
  { name: 'Water repellent', coats: 3, published: [78, 27, 11] },
];

const bareGain = new Map<number, number>();

/**
 * Effectiveness (%) that one resistance gives on the test block: the share of what the bare block has gained after
 * `days` in damp air that the finished one has not. @param resistance day/mm, 0 or more. @param days above 0, to 10 000.
 */
export function effectivenessAfter(days: number, resistance: number): number {
  const gain = (surface: number) => {
    const done = fractionDone({ ...TEST_BLOCK, surface }, days);
    return typeof done === 'number' ? done : Number.NaN;
  };
  const bare = bareGain.get(days) ?? gain(TEST_BLOCK.surface);
  bareGain.set(days, bare);
  return 100 * (1 - gain(surfaceUnderFinish.compute({ S_air: TEST_BLOCK.surface, r: resistance })) / bare);
}

/** Surface coefficient of a finished face: the film of air and the film of finish, one behind the other. */
export const surfaceUnderFinish = relation({
  id: 'surface-under-finish',
  title: 'How easily moisture passes a finished face',
  result: { symbol: 'S', name: 'surface coefficient', unit: 'mm/day' },
  inputs: {
    S_air: { name: 'surface coefficient of the air film', unit: 'mm/day', range: [0.5, 100] },
    r: { name: 'resistance of the finish', unit: 'day/mm', range: [0, 50] },
  },
  expression: '1 / (1 / S_air + r)',
  compute: ({ S_air, r }) => 1 / (1 / S_air + r),
  evidence: 'derived',
  source:
    'Resistances in series add. Fitted to the effectiveness of finishes in the Wood Handbook, Table 16-3.',
  limits: 'A film without cracks or pinholes. It says nothing of end grain or of wear.',
});
