/**
 * The names a cell may use: numbers of the box, figures of woods, relations. A name is read without regard to dots and
 * capitals, so `box.inside.width` and `box.insideWidth` are the same.
 */
import type { NumberField } from '../../box/core/field.ts';
import type { Box, NumberName } from '../../box/subjects/inputs.ts';
import { fields, hasInput } from '../../box/subjects/inputs.ts';
import { evaluate, type ResultName, type Values, wholeModel } from '../../box/whole/index.ts';
import { type WoodFigures, woodFigures } from '../../box/wood/figures.ts';
import { woods } from '../../box/wood/woods.ts';
import type { Relation } from '../../calc/core/relation.ts';
import { relations } from '../../calc/index.ts';
import type { Kind } from '../../units/index.ts';
import { amountOf } from './amounts.ts';
import type { Value } from './math.ts';

/** A number by name. */
export interface NamedNumber {
  readonly name: string;
  readonly meaning: string;
  /** Said where the number is a plain one: "percent", "°C". */
  readonly note?: string;
  /** Undefined where this box, or the tables, have no such number. */
  readonly value: Value | undefined;
}

/** The unit of each kind of number; those without are plain numbers, with what they count. */
const unitOfKind: Readonly<Record<Kind, string>> = {
  length: 'mm',
  area: 'mm^2',
  volume: 'mm^3',
  mass: 'g',
  force: 'N',
  lineLoad: 'N/mm',
  stress: 'MPa',
  angle: 'deg',
  days: 'day',
  percent: 'percent',
  points: 'percentage points',
  temperature: '°C',
  ratio: '',
  count: '',
  number: '',
};
const plainKinds: readonly Kind[] = ['percent', 'points', 'temperature', 'ratio', 'count', 'number'];

const numberOfKind = (value: number, kind: Kind) => {
  const unit = unitOfKind[kind];
  const isPlain = plainKinds.includes(kind);
  return {
    ...(isPlain && unit ? { note: `${unit}, a plain number` } : {}),
    value: !Number.isFinite(value) ? undefined : isPlain ? value : amountOf(value, unit),
  };
};

/** "inside.width" of "insideWidth". */
const dotted = (name: string) => name.replace(/[A-Z]/g, (letter) => `.${letter.toLowerCase()}`);
/** "blackWalnut" of "black-walnut". */
const camel = (id: string) => id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
/** What is compared of two names. */
export const keyOf = (name: string) => name.replaceAll('.', '').toLowerCase();

const figures: Readonly<Record<keyof WoodFigures, readonly [name: string, meaning: string, unit: string]>> = {
  radialCoefficient: ['radial', 'change of size across the rings per point of moisture content', ''],
  tangentialCoefficient: ['tangential', 'change of size along the rings per point of moisture content', ''],
  radialShrinkage: ['radialShrinkage', 'shrinkage across the rings, green to oven-dry', '%'],
  tangentialShrinkage: ['tangentialShrinkage', 'shrinkage along the rings, green to oven-dry', '%'],
  specificGravity: ['specificGravity', 'specific gravity', ''],
  modulusOfElasticity: ['stiffness', 'modulus of elasticity', 'MPa'],
  tensionPerpendicular: ['tension', 'strength across the grain', 'MPa'],
};

const woodNumbers = (before: string, of: string, has: WoodFigures): NamedNumber[] =>
  Object.entries(figures).flatMap(([figure, [name, meaning, unit]]) => {
    const value = has[figure as keyof WoodFigures];
    if (!Number.isFinite(value)) return [];
    return {
      name: `${before}.${dotted(name)}`,
      meaning: `${of}: ${meaning}`,
      ...(unit === '%' ? { note: 'percent, a plain number' } : {}),
      value: unit === 'MPa' ? amountOf(value, unit) : value,
    };
  });

function boxNumbers(box: Box): NamedNumber[] {
  const values: Values = evaluate(box);
  const inputs = Object.entries(fields).flatMap(([name, field]) =>
    field.type === 'number'
      ? {
          name: `box.${dotted(name)}`,
          meaning: field.label,
          ...numberOfKind(
            hasInput(name as keyof Box, box) ? values[name as NumberName] : Number.NaN,
            (field as NumberField).kind,
          ),
        }
      : [],
  );
  const results = Object.entries(wholeModel.results).map(([name, { label, kind, when }]) => ({
    name: `box.${dotted(name)}`,
    meaning: label,
    ...numberOfKind(when && !when(values) ? Number.NaN : values[name as ResultName], kind),
  }));
  return [...results, ...inputs, ...woodNumbers('box.wood', 'wood of the box', woodFigures(box.species))];
}

const ofWoods: readonly NamedNumber[] = woods.flatMap((wood) =>
  woodNumbers(`wood.${camel(wood.id)}`, wood.name, woodFigures(wood.id)),
);

/** Every relation by the name it is called by: `panelGap` of "panel-gap". */
export const callable: ReadonlyMap<string, Relation> = new Map(
  [...relations.values()].map((relation) => [camel(relation.id), relation]),
);
const relationByKey = new Map([...callable].map(([name, relation]) => [keyOf(name), relation]));
export const relationNamed = (name: string): Relation | undefined => relationByKey.get(keyOf(name));
export const relationNames: readonly string[] = [...callable.keys()];

/** Every number by name for one box. */
export function numbersOf(box: Box): ReadonlyMap<string, NamedNumber> {
  return new Map([...boxNumbers(box), ...ofWoods].map((one) => [keyOf(one.name), one]));
}
