/** The published tables and the cited works: every cell of the right kind, every row with a status and a source. (Over 150 lines: a schema a table.) */
import { readdirSync } from 'node:fs';
import { z } from 'astro/zod';
import { describe, expect, test } from 'vitest';
import { type Row, readSources, readTable, tableNames } from '../../src/build/tables.ts';

const text = z.string();
const name = z.string().min(1);
const number = z.string().regex(/^-?\d+(\.\d+)?$/);
/** A figure, or nothing where the table prints nothing or it was not read. */
const figure = z.union([number, z.literal('')]);
const status = z.enum([
  'seen',
  'seen in an extract',
  'seen in the abstract',
  'seen second-hand',
  'radial seen, tangential seen second-hand',
  'derived from shrinkage',
  'derived from coefficient',
  'from memory',
]);
const row = { status, source: name };
const group = z.enum(['hardwood', 'softwood', 'imported']);
const humidities = Array.from({ length: 19 }, (_, index) => 5 * (index + 1));
const all = <Kind>(columns: readonly string[], kind: Kind) =>
  Object.fromEntries(columns.map((column) => [column, kind])) as Record<string, Kind>;

const tables: Readonly<Record<string, { rows: number; schema: z.ZodType }>> = {
  'dimensional-change-coefficients': {
    rows: 57,
    schema: z.strictObject({
      species: name,
      group,
      ...all(['cr_fraction_per_pct_mc', 'ct_fraction_per_pct_mc', 't_over_r'], figure),
      ...row,
      note: text,
    }),
  },
  'shrinkage-green-to-ovendry': {
    rows: 97,
    schema: z.strictObject({
      species: name,
      botanical_name: text,
      group,
      ...all(['radial_pct', 'tangential_pct', 'volumetric_pct'], figure),
      origin: name,
      ...row,
      note: text,
    }),
  },
  'derived-movement': {
    rows: 84,
    schema: z.strictObject({
      species: name,
      quantity: z.enum([
        'CR',
        'CT',
        'radial shrinkage green to ovendry',
        'tangential shrinkage green to ovendry',
      ]),
      value: number,
      unit: name,
      computed_from: name,
      ...row,
      note: text,
    }),
  },
  'movement-from-memory': {
    rows: 38,
    schema: z.strictObject({
      species: name,
      group,
      ...all(['cr_fraction_per_pct_mc', 'ct_fraction_per_pct_mc'], number),
      ...all(['radial_pct', 'tangential_pct', 'volumetric_pct'], figure),
      status: z.literal('from memory'),
      source: name,
      note: name,
    }),
  },
  'equilibrium-moisture-content': {
    rows: 18,
    schema: z.strictObject({
      ...all(['temperature_c', 'temperature_f'], number),
      ...all(
        humidities.map((humidity) => `emc_pct_at_rh_${humidity}`),
        number,
      ),
      ...row,
    }),
  },
  'mechanical-properties': {
    rows: 112,
    schema: z.strictObject({
      species: name,
      group,
      ...all(
        [
          'specific_gravity_12pct',
          'mor_kpa',
          'moe_mpa',
          'work_to_max_load_kj_m3',
          'impact_bending_mm',
          'compression_parallel_kpa',
          'compression_perpendicular_kpa',
          'shear_parallel_kpa',
          'tension_perpendicular_kpa',
          'side_hardness_n',
        ],
        figure,
      ),
      readings_compared: number,
      ...row,
      note: text,
    }),
  },
  'mechanical-properties-imported': {
    rows: 11,
    schema: z.strictObject({
      species: name,
      botanical_name: name,
      moisture_content_pct: number,
      specific_gravity_green_basis: number,
      ...all(
        [
          'mor_lbf_in2',
          'moe_10e6_lbf_in2',
          'work_to_max_load_in_lbf_in3',
          'compression_parallel_lbf_in2',
          'shear_parallel_lbf_in2',
          'side_hardness_lbf',
          'mor_kpa_converted',
          'moe_mpa_converted',
          'compression_parallel_kpa_converted',
          'shear_parallel_kpa_converted',
          'side_hardness_n_converted',
        ],
        figure,
      ),
      origin: name,
      ...row,
      note: text,
    }),
  },
  'elastic-ratios': {
    rows: 24,
    schema: z.strictObject({
      species: name,
      group,
      ...all(
        ['et_over_el', 'er_over_el', 'glr_over_el', 'glt_over_el', 'grt_over_el', 'nu_lr', 'nu_lt', 'nu_rt'],
        figure,
      ),
      ...all(['nu_tr', 'nu_rl', 'nu_tl', 'bending_moe_mpa'], figure),
      ...row,
      note: text,
    }),
  },
  contents: {
    rows: 14,
    schema: z.strictObject({
      name,
      length_mm: number,
      width_mm: number,
      height_mm: figure,
      ...row,
      note: text,
    }),
  },
  friction: {
    rows: 11,
    schema: z.strictObject({
      ...all(['surface_a', 'surface_b', 'condition'], name),
      ...all(['coefficient', 'low', 'high'], figure),
      ...row,
      note: text,
    }),
  },
  'indoor-moisture-content': {
    rows: 18,
    schema: z.strictObject({
      ...all(['place', 'quantity', 'unit'], name),
      ...all(['value', 'low', 'high'], figure),
      ...row,
      note: text,
    }),
  },
  'outdoor-moisture-ranges': {
    rows: 7,
    schema: z.strictObject({
      ...all(['place', 'months'], name),
      ...all(['emc_low_pct', 'emc_high_pct'], number),
      ...row,
    }),
  },
  'moisture-excluding-effectiveness': {
    rows: 60,
    schema: z.strictObject({
      finish: name,
      binder_or_resin: text,
      coats: number,
      ...all(['mee_pct_1_day', 'mee_pct_7_days', 'mee_pct_14_days'], figure),
      ...row,
      note: text,
    }),
  },
};

const keys = readSources().flatMap((source) => source.keys ?? []);
const known = new Set(keys.map(({ key }) => key));

test('every table has its schema here', () => {
  expect([...tableNames()].sort()).toEqual(Object.keys(tables).sort());
});

describe.each(Object.entries(tables))('the table %s', (table, { rows, schema }) => {
  const found: readonly Row[] = readTable(table);

  test('has all its rows, and each cell is of its kind', () => {
    expect(found).toHaveLength(rows);
    for (const one of found) schema.parse({ ...one });
  });

  test('names for every row a source that is listed in content/sources, or common practice', () => {
    for (const one of found)
      for (const key of one.source!.split('; '))
        expect([table, key, known.has(key) || key === 'common practice']).toEqual([table, key, true]);
  });
});

test('every cited work fits its schema, under the name of its file', () => {
  const files = readdirSync(new URL('../../content/sources/', import.meta.url));
  expect(readSources().map(({ id }) => `${id}.yaml`)).toEqual(files);
});

test('no two works share a table key, and every key is used by a table or is a worked example', () => {
  expect(known.size).toBe(keys.length);
  const used = new Set(
    tableNames().flatMap((table) => readTable(table).flatMap((one) => one.source!.split('; '))),
  );
  expect([...known].filter((key) => !used.has(key))).toEqual(['FPL-RP-489']);
});

test('tangential movement is larger than radial in every row that has both', () => {
  for (const table of ['dimensional-change-coefficients', 'movement-from-memory'])
    for (const one of readTable(table))
      if (one.ct_fraction_per_pct_mc)
        expect(Number(one.ct_fraction_per_pct_mc)).toBeGreaterThan(Number(one.cr_fraction_per_pct_mc));
});
