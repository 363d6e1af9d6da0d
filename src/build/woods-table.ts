/**
 * Joins the published tables into one list of woods. Never part of a page.
 *
 * A figure that was read in print goes before one derived from a figure that was read, and that before one from
 * memory. Names are joined only where the tables mean the same wood: "Oak, black" of Table 13-5 carries the
 * California figures, so it gets nothing from the eastern black oak of Table 5-3, and a commercial group gets
 * nothing from one of its species. (Over 150 lines: every table has its own columns, and they meet only here.)
 */

import { woodId } from '../box/wood/packed-woods.ts';
import type { Figure, Wood } from '../calc/core/wood.ts';
import { coefficientFromShrinkage, shrinkageFromCoefficient } from '../calc/movement/movement.ts';
import { type Row, readSources, readTable } from './tables.ts';

/** The same wood under another heading. */
const sameWood: Readonly<Record<string, string>> = {
  'White oak, live': 'Oak, live (white oak group)',
  'White oak, overcup': 'Oak, overcup (white oak group)',
  'Mahogany (true)': 'Mahogany, true',
};
const commercialGroups = [
  'Red oak, commercial',
  'White oak, commercial',
  'Red oak: water, laurel, willow',
  'Hickory, true',
];
/** Woods whose cell walls are full well below 30 % MC (Wood Handbook 2010, chapter 4; "mahogany" taken to mean both). */
const lowFiberSaturation = /^(Cedar, (western redcedar|northern white)|Redwood|Teak|Mahogany)/;
/** Names that turning the table name round would get wrong. */
const runningNames: Readonly<Record<string, string>> = {
  'Oak, black': 'black oak (California figures)',
  'Red oak: water, laurel, willow': 'water, laurel and willow red oaks',
  'Cottonwood, balsam poplar': 'balsam poplar',
  'Magnolia, cucumbertree': 'cucumbertree',
  'Mahogany, true': 'true mahogany',
  'Cedar, western redcedar': 'western redcedar',
  'Cedar, eastern redcedar': 'eastern redcedar',
  'Cedar, incense': 'incense-cedar',
  'Cedar, yellow': 'yellow-cedar',
  'Cedar, Port-Orford': 'Port-Orford-cedar',
  'Cedar, Atlantic white': 'Atlantic white-cedar',
  'Cedar, northern white': 'northern white-cedar',
};

/** "Walnut, black" -> "black walnut"; "Oak, pin (red oak group)" -> "pin oak". */
function runningName(tableName: string): string {
  const special = runningNames[tableName];
  if (special) return special;
  const [kind = '', which] = tableName.replace(/ \(.*\)$/, '').split(', ');
  const small = /^(Douglas|Spanish)/.test(kind) ? kind : kind.toLowerCase();
  if (!which) return small;
  // "White oak, live" is live oak, but "White oak, commercial" keeps both words.
  return kind.includes(' ') && !/^(commercial|California)$/.test(which)
    ? `${which} oak`
    : `${which} ${small}`;
}

/** The figures of one wood while they are gathered. */
type Figures = {
  -readonly [Key in keyof Wood as Wood[Key] extends Figure | undefined ? Key : never]?: Figure | undefined;
};

/** All woods of the tables with at least one figure, in the order of their table names. */
export function woodsTable(): readonly Wood[] {
  const cited = new Map(
    readSources().flatMap(({ short, keys }) =>
      (keys ?? []).map(({ key, where, read }) => [key, { text: `${short}, ${where}`, read }] as const),
    ),
  );
  const found = new Map<string, { group: Wood['group']; botanicalName?: string; figures: Figures }>();

  const cite = (row: Row, key?: string, remark = '') => {
    const keys = row.source!.split('; ');
    // Of several readings of one figure, the one that the row's status speaks of.
    const { text, read } = cited.get(
      key ?? keys.find((one) => cited.get(one)?.read === row.status) ?? keys[0]!,
    )!;
    return (
      text + (read === 'seen' || read === 'from memory' ? '' : ` (${read.replace('seen', 'read')})`) + remark
    );
  };
  const at = (row: Row) => {
    const name = sameWood[row.species!] ?? row.species!;
    if (!found.has(name))
      found.set(name, { group: (row.group as Wood['group'] | undefined) ?? 'imported', figures: {} });
    const wood = found.get(name)!;
    if (row.botanical_name) wood.botanicalName = row.botanical_name;
    return wood;
  };
  // The tables are read in order of trust, so the first figure stays.
  const put = (
    row: Row,
    key: keyof Figures,
    text: string | undefined,
    status: Figure['status'],
    source: string,
    scale = 1,
  ) => {
    const { figures } = at(row);
    if (text && !figures[key])
      figures[key] = { value: Number((Number(text) * scale).toPrecision(6)), status, source };
  };

  const ownShrinkage = new Set(readTable('shrinkage-green-to-ovendry').map(({ species }) => species));
  /** Printed in one row with a neighbor, whose coefficients they are: their own shrinkage says more of them. */
  const grouped = new Set<string>();
  for (const row of readTable('dimensional-change-coefficients')) {
    if (/grouped row/.test(row.note ?? '') && ownShrinkage.has(row.species)) {
      grouped.add(row.species!);
      continue;
    }
    const keys = row.source!.split('; ');
    put(row, 'radialCoefficient', row.cr_fraction_per_pct_mc, 'read', cite(row));
    put(row, 'tangentialCoefficient', row.ct_fraction_per_pct_mc, 'read', cite(row, keys.at(-1)));
  }
  for (const row of readTable('shrinkage-green-to-ovendry')) {
    put(row, 'radialShrinkage', row.radial_pct, 'read', cite(row));
    put(row, 'tangentialShrinkage', row.tangential_pct, 'read', cite(row));
    put(row, 'volumetricShrinkage', row.volumetric_pct, 'read', cite(row));
  }
  for (const row of readTable('mechanical-properties')) {
    // Of western white pine the metric table prints a figure below its own green one; the inch-pound table is right.
    const misprint = row.species === 'Pine, western white';
    put(
      row,
      'specificGravity',
      misprint ? '0.38' : row.specific_gravity_12pct,
      'read',
      cite(row, misprint ? 'WH190-5-13' : undefined),
    );
    put(row, 'modulusOfElasticity', row.moe_mpa, 'read', cite(row));
    put(row, 'tensionPerpendicular', row.tension_perpendicular_kpa, 'read', cite(row), 1 / 1000);
    put(row, 'shearParallel', row.shear_parallel_kpa, 'read', cite(row), 1 / 1000);
    put(row, 'sideHardness', row.side_hardness_n, 'read', cite(row));
  }
  for (const row of readTable('mechanical-properties-imported')) {
    const remark = row.moisture_content_pct === '12' ? '' : `, at ${row.moisture_content_pct} % MC`;
    const source = cite(row, undefined, remark);
    put(
      row,
      'specificGravity',
      row.specific_gravity_green_basis,
      'read',
      cite(row, undefined, ', on green volume'),
    );
    put(row, 'modulusOfElasticity', row.moe_mpa_converted, 'read', source);
    put(row, 'shearParallel', row.shear_parallel_kpa_converted, 'read', source, 1 / 1000);
    put(row, 'sideHardness', row.side_hardness_n_converted, 'read', source);
  }
  for (const row of readTable('derived-movement')) {
    const from = `derived from the ${row.computed_from!.startsWith('C') ? 'coefficient' : 'shrinkage'} in ${cite(row)}`;
    const key = {
      CR: 'radialCoefficient',
      CT: 'tangentialCoefficient',
      'radial shrinkage green to ovendry': 'radialShrinkage',
      'tangential shrinkage green to ovendry': 'tangentialShrinkage',
    }[row.quantity!] as keyof Figures;
    put(row, key, row.value, 'derived', from);
  }
  for (const row of readTable('movement-from-memory')) {
    const source = `${cite(row)}, from memory`;
    const shrinkage = source.replace('13-5', row.group === 'imported' ? '4-4' : '4-3');
    put(row, 'radialCoefficient', row.cr_fraction_per_pct_mc, 'from memory', source);
    put(row, 'tangentialCoefficient', row.ct_fraction_per_pct_mc, 'from memory', source);
    put(row, 'radialShrinkage', row.radial_pct, 'from memory', shrinkage);
    put(row, 'tangentialShrinkage', row.tangential_pct, 'from memory', shrinkage);
    put(row, 'volumetricShrinkage', row.volumetric_pct, 'from memory', shrinkage);
  }

  return [...found]
    .sort(([one], [other]) => one.localeCompare(other, 'en'))
    .map(([tableName, { group, botanicalName, figures }]) => {
      const low = lowFiberSaturation.test(tableName);
      const shrinkage = (printed: Figure | undefined, from: Figure | undefined): Figure | undefined =>
        printed ??
        (from?.status === 'read' && !low
          ? {
              value: Number(shrinkageFromCoefficient.compute({ C: from.value }).toFixed(1)),
              status: 'derived',
              source: `derived from the coefficient in ${from.source}`,
            }
          : undefined);
      const coefficient = (printed: Figure | undefined, from: Figure | undefined): Figure | undefined =>
        printed ??
        (from && grouped.has(tableName)
          ? {
              value: Number(coefficientFromShrinkage.compute({ S: from.value }).toFixed(5)),
              status: 'derived',
              source: `derived from the shrinkage in ${from.source}; the printed coefficient is that of a group of neighbors`,
            }
          : undefined);
      return {
        id: woodId(runningName(tableName)),
        name: runningName(tableName),
        tableName,
        botanicalName,
        group,
        isGroup: commercialGroups.includes(tableName),
        lowFiberSaturation: low,
        radialCoefficient: coefficient(figures.radialCoefficient, figures.radialShrinkage),
        tangentialCoefficient: coefficient(figures.tangentialCoefficient, figures.tangentialShrinkage),
        radialShrinkage: shrinkage(figures.radialShrinkage, figures.radialCoefficient),
        tangentialShrinkage: shrinkage(figures.tangentialShrinkage, figures.tangentialCoefficient),
        volumetricShrinkage: figures.volumetricShrinkage,
        specificGravity: figures.specificGravity,
        modulusOfElasticity: figures.modulusOfElasticity,
        tensionPerpendicular: figures.tensionPerpendicular,
        shearParallel: figures.shearParallel,
        sideHardness: figures.sideHardness,
      };
    });
}

/** The woods with both movement coefficients. */
export const movingWoods = (all: readonly Wood[]): readonly Wood[] =>
  all.filter((wood) => wood.radialCoefficient && wood.tangentialCoefficient);
