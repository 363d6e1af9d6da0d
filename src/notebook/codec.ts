/**
 * A box as text: for the address fragment and for the device's store. Both carry a version and are read field by field
 * against `fields`, since either may be old, damaged or hostile: a field that cannot be used is left out and named, the
 * rest is kept.
 *
 *   link   version + "." + base64url of the JSON of what differs from that version's base (`bases.ts`)
 *   store  JSON { version: 1, box: { … } }
 */
import type { Box } from '../box/subjects/inputs.ts';
import { fields } from '../box/subjects/inputs.ts';
import { bases, isInBase, newest } from './bases.ts';
import { fits } from './settle.ts';
import { fromTail, longestLink, toTail } from './tail.ts';

const version = 1;

export type Decoded =
  | { ok: true; box: Box /** Labels of what could not be used. */; dropped: readonly string[] }
  | { ok: false; message: string };

const refuse = (message: string): Decoded => ({ ok: false, message });
const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Reads every field of something that claims to be (part of) a box; what is missing or cannot be used comes from the base. */
export function readBox(claimed: unknown, base: Box = bases[1]!): Decoded {
  if (!isRecord(claimed)) return refuse('It does not hold a box.');
  const box: Record<string, unknown> = { ...base };
  const dropped: string[] = [];
  for (const [name, value] of Object.entries(claimed)) {
    if (!Object.hasOwn(fields, name)) dropped.push(`“${name.slice(0, 30)}”, which is not known here`);
    else if (fits(fields[name as keyof Box], value)) box[name] = value;
    else dropped.push(fields[name as keyof Box].label);
  }
  if (dropped.length > 0 && dropped.length === Object.keys(claimed).length)
    return refuse(`Nothing in it can be used: ${dropped.join(', ')}.`);
  return { ok: true, box: box as unknown as Box, dropped };
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** The box as the tail of a link, without the `#box=`; `undefined` where it would be longer than a link may be. */
export function encodeLink(box: Box): string | undefined {
  const base = bases[newest]!;
  const changed = Object.fromEntries(
    Object.entries(box).filter(
      ([name, value]) => !isInBase(name) || JSON.stringify(base[name as keyof Box]) !== JSON.stringify(value),
    ),
  );
  const link = `${newest}.${toTail(changed)}`;
  return link.length <= longestLink ? link : undefined;
}

/** Reads what `encodeLink` wrote; anything else is refused with a message. */
export function decodeLink(link: string): Decoded {
  const dot = link.indexOf('.');
  if (link.length > longestLink || dot < 1) return refuse('This link does not hold a box.');
  const base = bases[Number(link.slice(0, dot))];
  if (!base) return refuse('This link was made by another version of the notebook.');
  try {
    return readBox(fromTail(link.slice(dot + 1)), base);
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
  return readBox(kept.box);
}
