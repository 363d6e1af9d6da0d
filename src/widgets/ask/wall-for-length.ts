/** "How thick for a box 10 inches long": the size is that of the box, and the answer is what the rule makes of it. */
import { printOf } from '../../box/core/field.ts';
import { judge } from '../../box/core/verdict.ts';
import { fields } from '../../box/subjects/inputs.ts';
import { evaluate, wholeModel } from '../../box/whole/index.ts';
import { say } from '../../box/work/say.ts';
import type { UnitSystem } from '../../units/index.ts';
import type { Entry } from './entry.ts';
import type { Own } from './own.ts';
import { type Asked, type ReadNumber, sizeOf } from './sizes.ts';

const rule = 'wall-thickness';
/** "How thick" asks for a thickness; "3/4 in thick" says one. */
const asksFor = /\bhow (thick|thin)\b|\bthickness\b/i;
/** Parts whose thickness does not follow from the length of the box. */
const others = ['=bottom', '=lid', '=panel', '=finger', '=divider', '=groove', '=board'];

/**
 * @param size the length as it was typed; said to be one, or too much for a wall
 * @param concepts of the words beside it
 * @returns undefined where something else is asked, or no box is so long
 */
export function wallForLength(
  read: ReadNumber,
  { typed, rest }: Asked,
  concepts: ReadonlySet<string>,
  { box }: Own,
  system: UnitSystem,
): Entry | undefined {
  if (!asksFor.test(rest) || others.some((one) => concepts.has(one))) return undefined;
  if (!concepts.has('=length') && sizeOf(read, typed, fields.wall, system) !== undefined) return undefined;
  const long = sizeOf(read, typed, fields.wantedLength, system);
  if (long === undefined) return undefined;
  const wide = Math.min(box.wantedWidth, long);
  const values = evaluate({ ...box, sizeFrom: 'outside', wantedLength: long, wantedWidth: wide });
  const check = wholeModel.checks.find(({ id }) => id === rule);
  const verdict = check && judge(check, values);
  if (!verdict || verdict.state === 'unknown') return undefined;
  const [low, high] = verdict.usual;
  const print = { kind: fields.wall.kind, ...printOf(fields.wall) };
  return {
    id: 'sized:wall',
    kind: 'sized',
    title: 'usual wall thickness',
    path: `rules/${rule}/`,
    says: say`Of a box ${{ value: long, kind: fields.wantedLength.kind, ...printOf(fields.wantedLength) }} long; mine is ${{ value: values.wall, ...print }} thick.`,
    rule,
    part: { of: 'left', side: 'thickness' },
    number: () => say`${{ value: low, ...print }} to ${{ value: high, ...print }}`,
  };
}
