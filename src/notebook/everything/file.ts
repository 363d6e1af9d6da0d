/**
 * Everything a reader keeps as one file: the texts under every key of `keys.ts` as they stand in the store, with a checksum.
 *
 *   { notebook: 1, site: "0.1.0", made: "2026-11-28", check: "1x2y3z", kept: { box: "…", notes: "…", … } }
 */
import { siteVersion } from '../site-version.ts';
import type { Notebook } from './everything.ts';
import { keys } from './keys.ts';

const version = 1;
/** More than a browser's store holds. */
const longestFile = 12_000_000;

/** Whether a text was changed on its way: FNV-1a, 32 bits, over the code units. */
function checkOf(kept: Notebook): string {
  let mixed = 0x811c9dc5;
  for (const pair of Object.entries(kept).sort(([one], [other]) => (one < other ? -1 : 1)))
    for (const part of pair)
      for (let at = 0; at <= part.length; at++)
        mixed = Math.imul(mixed ^ (at < part.length ? part.charCodeAt(at) : 0x10000), 0x01000193);
  return (mixed >>> 0).toString(36);
}

/** The text of a notebook's file. @param made the day, "2026-11-28" */
export const writeNotebook = (kept: Notebook, made: string): string =>
  `${JSON.stringify({ notebook: version, site: siteVersion, made, check: checkOf(kept), kept }, undefined, 1)}\n`;

export type ReadNotebook =
  | {
      readonly ok: true;
      readonly made: string;
      readonly kept: Notebook;
      /** How many things in it are not known here. */
      readonly unknown: number;
    }
  | { readonly ok: false; readonly message: string };

const refuse = (message: string): ReadNotebook => ({ ok: false, message: `${message} Nothing was changed.` });

/** Reads what `writeNotebook` wrote; anything else is refused with a message. */
export function readNotebook(text: string): ReadNotebook {
  if (text.length > longestFile) return refuse('This file is too large to be a notebook.');
  let claimed: Record<string, unknown> | null;
  try {
    claimed = JSON.parse(text);
  } catch {
    return refuse('This file is damaged, or it is no notebook: its end or a part of it is missing.');
  }
  const found = claimed?.notebook;
  if (found === undefined && claimed?.box)
    return refuse('This file holds one box. Open it on the page “My box”, under “share”.');
  if (found === undefined && claimed?.cells)
    return refuse('This file holds scratch cells. Open it on the page “Scratch cells”.');
  if (typeof found === 'number' && found > version)
    return refuse(
      'This file is from a newer version of the notebook. Open this page with a network, so that it renews itself, and try again.',
    );
  if (found !== version) return refuse('This file is no notebook.');
  const { kept, check, made } = claimed!;
  if (
    typeof kept !== 'object' ||
    kept === null ||
    !Object.values(kept).every((one) => typeof one === 'string')
  )
    return refuse('This file is damaged.');
  if (checkOf(kept as Notebook) !== check)
    return refuse('This file was damaged or changed on its way. Save it anew where it comes from.');
  const own = Object.entries(kept as Notebook).filter(([key]) => Object.hasOwn(keys, key));
  return {
    ok: true,
    made: typeof made === 'string' ? made.slice(0, 10) : '',
    kept: Object.fromEntries(own),
    unknown: Object.keys(kept).length - own.length,
  };
}
