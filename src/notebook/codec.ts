/**
 * A box as text: for the address fragment and for the device's store. Both carry a version and are validated
 * field by field against `fields`, since either may be old, damaged or hostile.
 *
 *   link   "1." + base64url of the JSON of what differs from the example
 *   store  JSON { version: 1, box: { … } }
 */
import { type Box, exampleBox } from '../box/box.ts';
import { type Field, fields } from '../box/fields.ts';

const version = 1;
/** A link longer than this is not one of ours. */
const longestLink = 8000;

export type Decoded = { ok: true; box: Box } | { ok: false; message: string };

const refuse = (message: string): Decoded => ({ ok: false, message });
const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isNumber = (value: unknown, low: number, high: number) =>
  typeof value === 'number' && value >= low && value <= high;
const isText = (value: unknown, longest: number): value is string =>
  typeof value === 'string' && value.length <= longest;
const isItem = (value: unknown) =>
  isRecord(value) &&
  Object.keys(value).length === 5 &&
  isText(value.name, 60) &&
  isNumber(value.length, 0.1, 1000) &&
  isNumber(value.width, 0.1, 1000) &&
  isNumber(value.height, 0.1, 1000) &&
  isNumber(value.count, 1, 1000) &&
  Number.isInteger(value.count);

/** Whether a value may stand in a field. */
function fits(field: Field, value: unknown): boolean {
  switch (field.type) {
    case 'number':
      return isNumber(value, field.low, field.high);
    case 'choice':
      return typeof value === 'string' && Object.hasOwn(field.options, value);
    case 'text':
      return isText(value, field.longest);
    case 'items':
      return Array.isArray(value) && value.length <= field.most && value.every(isItem);
    case 'reasons':
      return (
        isRecord(value) &&
        Object.entries(value).length <= 100 &&
        Object.entries(value).every(
          ([rule, reason]) => /^[a-z0-9-]{1,60}$/.test(rule) && isText(reason, field.longest),
        )
      );
  }
}

/** Checks every field of something that claims to be (part of) a box; missing fields come from the example. */
export function validateBox(claimed: unknown): Decoded {
  if (!isRecord(claimed)) return refuse('It does not hold a box.');
  const box: Record<string, unknown> = { ...exampleBox };
  for (const [name, value] of Object.entries(claimed)) {
    if (!Object.hasOwn(fields, name)) return refuse(`It holds something unknown: “${name.slice(0, 30)}”.`);
    const field = fields[name as keyof Box];
    if (!fits(field, value)) return refuse(`The ${field.label} in it cannot be used.`);
    box[name] = value;
  }
  return { ok: true, box: box as unknown as Box };
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** The box as the tail of a link, without the `#box=`. */
export function encodeLink(box: Box): string {
  const changed = Object.fromEntries(
    Object.entries(box).filter(
      ([name, value]) => JSON.stringify(exampleBox[name as keyof Box]) !== JSON.stringify(value),
    ),
  );
  const bytes = new TextEncoder().encode(JSON.stringify(changed));
  const text = btoa(String.fromCharCode(...bytes));
  return `${version}.${text.replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')}`;
}

/** Reads what `encodeLink` wrote; anything else is refused with a message. */
export function decodeLink(link: string): Decoded {
  const dot = link.indexOf('.');
  if (link.length > longestLink || dot < 1) return refuse('This link does not hold a box.');
  if (Number(link.slice(0, dot)) !== version)
    return refuse('This link was made by another version of the notebook.');
  try {
    const text = atob(
      link
        .slice(dot + 1)
        .replaceAll('-', '+')
        .replaceAll('_', '/'),
    );
    const bytes = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
    const claimed = parseJson(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    return validateBox(claimed);
  } catch {
    return refuse('This link is damaged.');
  }
}

/** The box as kept on the device. */
export function encodeStore(box: Box): string {
  return JSON.stringify({ version, box });
}

/** Reads what `encodeStore` wrote; anything else is refused with a message. */
export function decodeStore(text: string): Decoded {
  const kept = parseJson(text);
  if (!isRecord(kept)) return refuse('The box kept on this device is damaged.');
  if (kept.version !== version) return refuse('The box kept on this device is from another version.');
  return validateBox(kept.box);
}
