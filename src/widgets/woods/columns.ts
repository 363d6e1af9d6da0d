/** The columns of the woods table: what they show, how they sort, how they print. Shared by the table, the comparison and the CSV. */
import type { Figure, Wood } from '../../calc/core/wood.ts';
import { format, type UnitSystem } from '../../units/index.ts';

export interface Column {
  readonly key: string;
  readonly label: string;
  /** Longer name, for the comparison and the file. */
  readonly name: string;
  readonly figure: (wood: Wood) => Figure | undefined;
  readonly show: (value: number, system: UnitSystem) => string;
  /** Unit in the file. */
  readonly unit: string;
}

/** A ratio or density of two figures is worth as much as the weaker of them. */
function from(
  value: (...values: number[]) => number,
  ...figures: (Figure | undefined)[]
): Figure | undefined {
  if (figures.some((figure) => figure === undefined)) return undefined;
  const known = figures as Figure[];
  const status = (['from memory', 'derived', 'read'] as const).find((one) =>
    known.some((figure) => figure.status === one),
  );
  return {
    value: value(...known.map((figure) => figure.value)),
    status: status === 'read' ? 'derived' : (status ?? 'derived'),
    source: [...new Set(known.map((figure) => figure.source))].join('; '),
  };
}

/** Movement as the trade says it: percent of the size for one percent of moisture. */
const movement = (value: number) => format(value * 100, 'number', { system: 'mm', digits: 3 });

/** Density at 12 % moisture content: specific gravity × 1.12 × 1000 kg/m³ (Wood Handbook eq. 4-14). Not where it stands on green volume. */
export const densityOf = (wood: Wood): Figure | undefined =>
  wood.group === 'imported' ? undefined : from((gravity) => gravity! * 1120, wood.specificGravity);

export const ratioOf = (wood: Wood): Figure | undefined =>
  from((tangential, radial) => tangential! / radial!, wood.tangentialCoefficient, wood.radialCoefficient);

export const columns: readonly Column[] = [
  {
    key: 'tangential',
    label: 'along the rings',
    name: 'movement along the rings (tangential, flat-sawn width), % of the size per 1 % moisture',
    figure: (wood) => wood.tangentialCoefficient,
    show: movement,
    unit: 'fraction per 1 % MC',
  },
  {
    key: 'radial',
    label: 'across the rings',
    name: 'movement across the rings (radial, quarter-sawn width), % of the size per 1 % moisture',
    figure: (wood) => wood.radialCoefficient,
    show: movement,
    unit: 'fraction per 1 % MC',
  },
  {
    key: 'ratio',
    label: 'ratio',
    name: 'ratio of the two movements',
    figure: ratioOf,
    show: (value) => format(value, 'ratio', { system: 'mm', digits: 2 }),
    unit: '1',
  },
  {
    key: 'shrinkage',
    label: 'shrinkage, %',
    name: 'shrinkage along the rings from green to oven-dry, %',
    figure: (wood) => wood.tangentialShrinkage,
    show: (value) => format(value, 'number', { system: 'mm', digits: 1 }),
    unit: '% of the green size',
  },
  {
    key: 'density',
    label: 'density, kg/m³',
    name: 'density at 12 % moisture, kg/m³',
    figure: densityOf,
    show: (value) => format(value, 'number', { system: 'mm', digits: 0 }),
    unit: 'kg/m3 at 12 % MC',
  },
  {
    key: 'hardness',
    label: 'hardness, N',
    name: 'side hardness, N',
    figure: (wood) => wood.sideHardness,
    show: (value) => format(value, 'number', { system: 'mm', digits: 0 }),
    unit: 'N',
  },
  {
    key: 'stiffness',
    label: 'stiffness, GPa',
    name: 'bending stiffness (modulus of elasticity), GPa',
    figure: (wood) => wood.modulusOfElasticity,
    show: (value) => format(value / 1000, 'number', { system: 'mm', digits: 1 }),
    unit: 'MPa',
  },
];

/** How a figure is known, as a small mark behind it; the legend explains the marks. */
export const mark = { read: '', derived: 'd', 'from memory': 'm' } as const;
