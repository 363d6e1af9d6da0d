/**
 * A design as a file: JSON with a version, validated when it is opened; and the cut list as CSV.
 *
 *   version 1   { version: 1, box: { … } }, as the device keeps it: written where there are no notes, so that every version of
 *               the notebook opens it
 *   version 2   the same with the reader’s notes
 *
 * Both name the version of the site that wrote them, under `site`, for whoever looks for a fault; no reader goes by it. A CSV
 * has no place for it: its format knows no remarks.
 */

import type { Design } from '../box/design/design.ts';
import { shownSize, sides } from '../box/design/shown-size.ts';
import type { Box } from '../box/subjects/inputs.ts';
import { format, type RulerPair } from '../units/index.ts';
import { type Decoded, decodeStore, encodeStore, readBox } from './codec.ts';
import { type Notes, readNotes } from './learning/notes.ts';
import { siteVersion } from './site-version.ts';

/** A design is a few kilobytes, and notes are as long as their reader writes; anything larger is something else. */
const longestFile = 2_000_000;
const withNotes = 2;

/** The text of a design file. */
export function writeFile(box: Box, notes: Notes = {}): string {
  const kept: object = JSON.parse(encodeStore(box));
  const all = {
    ...kept,
    site: siteVersion,
    ...(Object.keys(notes).length > 0 && { version: withNotes, notes }),
  };
  return `${JSON.stringify(all, undefined, 2)}\n`;
}

export type OpenedFile = Decoded & { readonly notes: Notes };

const recordOf = (text: string): Record<string, unknown> => {
  try {
    const claimed: unknown = JSON.parse(text);
    return typeof claimed === 'object' && claimed !== null ? { ...claimed } : {};
  } catch {
    return {};
  }
};

/** Reads a design file; anything else is refused with a message. */
export async function readFile(file: Blob): Promise<OpenedFile> {
  const refused = (message: string): OpenedFile => ({ ok: false, message, notes: {} });
  if (file.size > longestFile) return refused('This file is too large to be a design.');
  const text = await file.text();
  const claimed = recordOf(text);
  if (claimed.notebook !== undefined)
    return refused('This file holds a whole notebook. Bring it in on the page “My notebook”.');
  const decoded = claimed.version === withNotes ? readBox(claimed.box) : decodeStore(text);
  return decoded.ok
    ? { ...decoded, notes: readNotes(claimed.notes) }
    : refused(decoded.message.replace('box kept on this device', 'box in this file'));
}

/** A file name from the name of the box: letters, digits and hyphens. */
export function fileNameOf(box: Pick<Box, 'name'>, ending: string): string {
  const name = box.name
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return `${name || 'box'}.${ending}`;
}

/** One cell, quoted where it must be. A leading sign that a spreadsheet would take for a formula gets an apostrophe. */
const cell = (text: string | number): string => {
  const safe = String(text).replace(/^[=+@\t\r]/, "'$&");
  return /[",\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

/** The cut list as CSV: the same numbers as on the page, in mm and in inches, each on its ruler. */
export function cutListCsv({ parts }: Design, on: RulerPair): string {
  const heading = ['part', 'how many', 'material', 'grain'];
  for (const state of ['finished', 'rough'])
    for (const side of sides) heading.push(`${state} ${side}, mm`, `${state} ${side}, in`);
  const rows = parts.map((part) => [
    part.label,
    part.count,
    part.material,
    part.grain,
    ...(['finished', 'rough'] as const).flatMap((state) =>
      sides.flatMap((side) => {
        const { value, kind, ...options } = shownSize(part, state, side);
        return (['mm', 'inch'] as const).map((system) =>
          asText(format(value, kind, { ...options, system, ruler: on[system], unit: false }), system),
        );
      }),
    ),
    part.note,
  ]);
  return [[...heading, 'note'], ...rows].map((row) => row.map(cell).join(',')).join('\r\n');
}

/** A fraction is written with its unit, "3/8 in": alone, a spreadsheet would read it as a date. */
const asText = (text: string, system: 'mm' | 'inch') =>
  system === 'inch' ? `${text.replace('\u00a0', ' ')} in` : text;
