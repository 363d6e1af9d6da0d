/** "wall 1/4": a size that was asked about, put into the reader's box and judged by the check of its rule. */
import { type NumberField, printOf } from '../../box/core/field.ts';
import { judge } from '../../box/core/verdict.ts';
import { type Box, fields, hasInput, type NumberName } from '../../box/subjects/inputs.ts';
import { evaluate, wholeModel } from '../../box/whole/index.ts';
import { say } from '../../box/work/say.ts';
import type { Marked } from '../../figures/box/MarkedBox.tsx';
import type { UnitSystem } from '../../units/index.ts';
import type { Entry } from './entry.ts';
import type { Own } from './own.ts';
import { type ReadNumber, sizeOf } from './sizes.ts';

interface Thing {
  readonly input: NumberName;
  /** Concepts that name it: all of one row. */
  readonly named: readonly (readonly string[])[];
  /** Concepts that say the size is another's: "a groove for 1/4 ply". */
  readonly unless?: readonly string[];
  /** Checks that judge it; the first that speaks about the box does. */
  readonly checks: readonly string[];
  readonly part?: Marked;
}

/** The most particular first. */
const things: readonly Thing[] = [
  {
    input: 'lidGrooveDepth',
    named: [['=groove', '=lid']],
    checks: ['groove-depth-lid'],
    part: { of: 'lid' },
  },
  {
    input: 'bottomLip',
    named: [
      ['=lip', '=bottom'],
      ['=lip', '=below'],
    ],
    checks: ['lip-below-bottom-groove'],
    part: { of: 'walls' },
  },
  { input: 'lidLip', named: [['=lip']], checks: ['lip-beside-lid-groove'], part: { of: 'walls' } },
  {
    input: 'fingerFit',
    named: [
      ['=finger', '=gap'],
      ['=finger', '=fit'],
    ],
    checks: ['finger-fit'],
    part: { of: 'walls' },
  },
  {
    input: 'bottomGap',
    named: [['=gap', '=bottom']],
    checks: ['gap-beside-the-bottom'],
    part: { of: 'bottom' },
  },
  { input: 'lidPlay', named: [['=gap']], checks: ['lid-clearance'], part: { of: 'lid' } },
  { input: 'diagonalsApart', named: [['=diagonal']], checks: ['diagonals'], part: { of: 'box' } },
  { input: 'rock', named: [['=rocks']], checks: ['twist'], part: { of: 'box' } },
  { input: 'fingerWidth', named: [['=finger']], checks: ['finger-width'], part: { of: 'walls' } },
  {
    input: 'grooveDepth',
    named: [['=groove']],
    unless: ['=plywood', '=panel'],
    checks: ['groove-depth'],
    part: { of: 'walls' },
  },
  {
    input: 'bottomThickness',
    named: [['=bottom']],
    checks: ['bottom-thickness', 'bottom-thickness-plywood'],
    part: { of: 'bottom', side: 'thickness' },
  },
  { input: 'wall', named: [['=wall']], checks: ['wall-thickness'], part: { of: 'left', side: 'thickness' } },
  { input: 'humidityToday', named: [['=humidity']], checks: ['build-in-the-middle'] },
  { input: 'ringAngle', named: [['=rings']], checks: ['quarter-sawn-for-lids'], part: { of: 'lid' } },
  { input: 'pullOffset', named: [['=pull']], checks: ['pull-in-the-middle'], part: { of: 'lid' } },
  { input: 'clearance', named: [['=room']], checks: ['design-from-the-inside'], part: { of: 'inside' } },
];

/** Checks that judge an input by what follows from it: the depth of a groove by its share of the wall. */
export const checksOf = (name: string): readonly string[] =>
  things.find(({ input }) => input === name)?.checks ?? [];

/** What else a question says about the box: "6 mm plywood bottom". */
const also = (concepts: ReadonlySet<string>): Partial<Box> =>
  concepts.has('=plywood') ? { bottom: 'plywood' } : concepts.has('=solid') ? { bottom: 'solid' } : {};

/**
 * @param typed the size as it was typed
 * @param concepts of the words beside it
 * @returns undefined where no rule judges such a thing, or the size can be none of it
 */
export function judgedSize(
  read: ReadNumber,
  typed: string,
  concepts: ReadonlySet<string>,
  own: Own,
  system: UnitSystem,
): Entry | undefined {
  const thing = things.find(
    ({ named, unless = [], input }) =>
      hasInput(input, own.box) &&
      !unless.some((concept) => concepts.has(concept)) &&
      named.some((all) => all.every((concept) => concepts.has(concept))),
  );
  if (!thing) return undefined;
  const { input, checks, part } = thing;
  const field: NumberField = fields[input];
  const value = sizeOf(read, typed, field, system);
  if (value === undefined) return undefined;
  const values = evaluate({ ...own.box, ...also(concepts), [input]: value });
  const verdict = wholeModel.checks
    .filter(({ id }) => checks.includes(id))
    .map((check) => judge(check, values))
    .find((one) => one !== undefined);
  if (!verdict) return undefined;
  const print = { kind: field.kind, ...printOf(field) };
  return {
    id: `judged:${input}`,
    kind: 'judged',
    title: field.label,
    path: `rules/${verdict.check.rule}/`,
    says: say`In my box it is ${{ value: own.box[input], ...print }}.`,
    rule: verdict.check.rule,
    verdict,
    part,
    number: () => [{ value, ...print }],
  };
}
