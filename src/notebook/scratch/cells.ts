/**
 * Cells as text: for the device's store, a link and a file. All carry a version and are read cell by cell, since each may
 * be old, damaged or hostile: a cell that cannot be used is left out and counted, the rest is kept.
 *
 *   link         version + "." + base64url of the JSON of the cells
 *   store        JSON { version: 1, cells: [ … ] }
 *   file         the same with the version of the site, under `site`
 */
import { siteVersion } from '../site-version.ts';
import { fromTail, longestLink, toTail } from '../tail.ts';
import { longestText } from './tidy.ts';

/** A sum gives one number, a plot many, a note says something. */
export type Cell =
  | {
      readonly type: 'sum';
      readonly text: string;
      /** The lesson at whose end it was written, by its address. */
      readonly from?: string;
    }
  | { readonly type: 'note'; readonly text: string }
  | {
      readonly type: 'plot';
      /** What is plotted, over which name, from where to where: expressions. */
      readonly text: string;
      readonly over: string;
      readonly from: string;
      readonly to: string;
    };

export const mostCells = 60;
export const longestNote = 1000;
/** Characters of each end of a plot. */
export const longestEnd = 80;
export const longestOver = 31;
const longestFile = 200_000;
const version = 1;

export type DecodedCells =
  | { readonly ok: true; readonly cells: readonly Cell[]; readonly dropped: number }
  | { readonly ok: false; readonly message: string };

const refuse = (message: string): DecodedCells => ({ ok: false, message });
const isText = (value: unknown, longest: number): value is string =>
  typeof value === 'string' && value.length <= longest;

const isAddress = (value: unknown): value is string => isText(value, 60) && /^[a-z0-9-]+$/.test(value);

function readCell(claimed: unknown): Cell | undefined {
  const { type, text, over, from, to } = (claimed ?? {}) as Record<string, unknown>;
  if (type === 'note') return isText(text, longestNote) ? { type, text } : undefined;
  if (!isText(text, longestText)) return undefined;
  if (type === 'sum') return { type, text, ...(isAddress(from) ? { from } : {}) };
  if (type !== 'plot' || !isText(over, longestOver) || !isText(from, longestEnd) || !isText(to, longestEnd))
    return undefined;
  return { type, text, over, from, to };
}

/** Reads what claims to be a list of cells. */
function readCells(claimed: unknown): DecodedCells {
  if (!Array.isArray(claimed)) return refuse('It does not hold cells.');
  const cells = claimed.slice(0, mostCells).flatMap((one) => readCell(one) ?? []);
  if (cells.length === 0 && claimed.length > 0) return refuse('None of its cells can be used.');
  return { ok: true, cells, dropped: claimed.length - cells.length };
}

/** The cells as kept on the device. */
export const writeCells = (cells: readonly Cell[]): string =>
  `${JSON.stringify({ version, cells }, undefined, 2)}\n`;

/** The cells as a file, which names the version of the site. */
export const writeCellsFile = (cells: readonly Cell[]): string =>
  `${JSON.stringify({ version, site: siteVersion, cells }, undefined, 2)}\n`;

/** Reads what `writeCells` or `writeCellsFile` wrote. @param where "kept on this device", for the message */
export function decodeCells(text: string, where: string): DecodedCells {
  let claimed: { version?: unknown; cells?: unknown } | null;
  try {
    claimed = JSON.parse(text);
  } catch {
    return refuse(`What is ${where} is damaged.`);
  }
  if (claimed?.version !== version) return refuse(`What is ${where} does not hold cells of this version.`);
  return readCells(claimed.cells);
}

/** Reads a file of cells; anything else is refused with a message. */
export async function readCellsFile(file: Blob): Promise<DecodedCells> {
  if (file.size > longestFile) return refuse('This file is too large to hold cells.');
  return decodeCells(await file.text(), 'in this file');
}

/** The cells as the tail of a link, without the `#scratch=`; undefined where it would be longer than a link may be. */
export function encodeCellsLink(cells: readonly Cell[]): string | undefined {
  const link = `${version}.${toTail(cells)}`;
  return link.length <= longestLink ? link : undefined;
}

/** Reads what `encodeCellsLink` wrote. */
export function decodeCellsLink(link: string): DecodedCells {
  const dot = link.indexOf('.');
  if (link.length > longestLink || dot < 1) return refuse('This link does not hold cells.');
  if (Number(link.slice(0, dot)) !== version)
    return refuse('This link was made by another version of the notebook.');
  try {
    return readCells(fromTail(link.slice(dot + 1)));
  } catch {
    return refuse('This link is damaged.');
  }
}
