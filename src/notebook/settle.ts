/**
 * What may stand in a box: every value that is read from outside, and every change of a widget, passes here. So whatever
 * a control or button writes can be read back from the store, a link, a file and a kept design.
 */

import { type Field, type Item, type NumberField, printOf } from '../box/core/field.ts';
import type { Box } from '../box/subjects/inputs.ts';
import { fields } from '../box/subjects/inputs.ts';
import { format } from '../units/index.ts';

/** Sizes of one thing, mm, and how many there may be of it. */
export const itemLimits = { size: [0.1, 1000], count: [1, 1000] } as const;
const longestName = 60;
const mostReasons = 100;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isText = (value: unknown, longest: number): value is string =>
  typeof value === 'string' && value.length <= longest;
const isNumber = (value: unknown, [low, high]: readonly [number, number]): value is number =>
  typeof value === 'number' && value >= low && value <= high;

const isItem = (value: unknown): value is Item =>
  isRecord(value) &&
  Object.keys(value).length === 5 &&
  isText(value.name, longestName) &&
  [value.length, value.width, value.height].every((size) => isNumber(size, itemLimits.size)) &&
  isNumber(value.count, itemLimits.count) &&
  Number.isInteger(value.count);

/** Whether a value may stand in a field. */
export function fits(field: Field, value: unknown): boolean {
  switch (field.type) {
    case 'number':
      return isNumber(value, [field.low, field.high]);
    case 'choice':
      return typeof value === 'string' && Object.hasOwn(field.options, value);
    case 'text':
      return isText(value, field.longest);
    case 'items':
      return Array.isArray(value) && value.length <= field.most && value.every(isItem);
    case 'reasons':
      return (
        isRecord(value) &&
        Object.entries(value).length <= mostReasons &&
        Object.entries(value).every(
          ([check, reason]) => /^[a-z0-9-]{1,60}$/.test(check) && isText(reason, field.longest),
        )
      );
  }
}

/** A wanted change as it can be made, and in words what could not be as wanted. */
export interface Settled {
  readonly inputs: Partial<Box>;
  readonly notes: readonly string[];
}

const both = (value: number, field: NumberField) => {
  const [mm, inch] = (['mm', 'inch'] as const).map((system) =>
    format(value, field.kind, { ...printOf(field), system }),
  );
  return mm === inch ? mm : `${mm} (${inch})`;
};

/** Brings a number to the nearest end of its field; what is no number at all is left out. */
function settleNumber(field: NumberField, value: unknown): { value?: number; note?: string } {
  if (typeof value !== 'number' || Number.isNaN(value))
    return { note: `The ${field.label} stays: that was no number.` };
  // A slider at zero may stand at minus zero, which no file keeps.
  if (fits(field, value)) return { value: value + 0 };
  const end = value < field.low ? field.low : field.high;
  // A slider's last step may miss the end by a hair.
  const hair = Math.abs(value - end) <= 1e-9 * Math.max(1, Math.abs(end));
  const word = value < field.low ? 'least' : 'most';
  return {
    value: end,
    ...(!hair && {
      note: `The ${field.label} goes to ${both(end, field)}, the ${word} it can be here; ${both(value, field)} was asked for.`,
    }),
  };
}

const clamp = (value: number, [low, high]: readonly [number, number]) =>
  Number.isFinite(value) ? Math.min(high, Math.max(low, value)) : low;

/** Brings one thing of the contents within its limits. */
const settleItem = (item: Item): Item => ({
  name: String(item.name).slice(0, longestName),
  length: clamp(item.length, itemLimits.size),
  width: clamp(item.width, itemLimits.size),
  height: clamp(item.height, itemLimits.size),
  count: Math.round(clamp(item.count, itemLimits.count)),
});

/** A change as it can be made: numbers brought within their fields, the rest left out where it cannot stand there. */
export function settle(wanted: Partial<Box>): Settled {
  const inputs: Record<string, unknown> = {};
  const notes: string[] = [];
  for (const [name, value] of Object.entries(wanted)) {
    if (!Object.hasOwn(fields, name)) continue;
    const field = fields[name as keyof Box];
    if (field.type === 'number') {
      const settled = settleNumber(field, value);
      if (settled.value !== undefined) inputs[name] = settled.value;
      if (settled.note) notes.push(settled.note);
    } else if (field.type === 'text' && typeof value === 'string')
      inputs[name] = value.slice(0, field.longest);
    else if (fits(field, value)) inputs[name] = value;
    else if (field.type === 'items' && Array.isArray(value)) {
      inputs[name] = value.slice(0, field.most).map(settleItem);
      notes.push(
        `The ${field.label} was brought within what can be laid: sizes to 1 m, at most ${field.most} things.`,
      );
    } else notes.push(`The ${field.label} stays as it is: what was asked for cannot be kept.`);
  }
  return { inputs: inputs as Partial<Box>, notes };
}
