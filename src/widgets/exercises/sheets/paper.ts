/** The paper: its size, the room on a page, and what stands on which page. Pure. */
import type { Paper } from '../../../notebook/learning/sheets.ts';

/** Width and height, mm. */
const sizes: Readonly<Record<Paper, readonly [width: number, height: number]>> = {
  A4: [210, 297],
  Letter: [215.9, 279.4],
};
/** Left free all round, mm: more than any usual printer needs. */
export const margin = 12;
/** The foot of a page with the space above it, mm. */
const foot = 8;
/** Text is set a little differently on paper than on the screen where it is measured, mm. */
const spare = 4;

/** Inside the margins, mm. A page that is half a millimeter short never spills onto a next one. */
export const pageSize = (paper: Paper) => ({
  width: sizes[paper][0] - 2 * margin,
  height: sizes[paper][1] - 2 * margin - 0.5,
});

/** What may be filled, in CSS pixels. */
export const roomOn = (paper: Paper): number => ((pageSize(paper).height - foot - spare) * 96) / 25.4;

/** Which blocks stand on which page: in order, none broken. One that is longer than a page has a page to itself. */
export function packBlocks(heights: readonly number[], room: number): number[][] {
  const pages: number[][] = [];
  let left = 0;
  heights.forEach((height, at) => {
    if (height > left) {
      pages.push([]);
      left = room;
    }
    pages.at(-1)!.push(at);
    left -= height;
  });
  return pages;
}

/** Heights of a table of keys. */
export interface KeyHeights {
  /** Its title, and the heads of its columns. */
  readonly head: number;
  readonly columns: number;
  readonly rows: readonly number[];
  readonly notes: readonly number[];
}

/** A table of keys, or as much of it as one page holds: rows and notes from the first to before the last. */
export interface KeyPiece {
  readonly at: number;
  readonly rows: readonly [from: number, to: number];
  readonly notes: readonly [from: number, to: number];
}

const sum = (heights: readonly number[]) => heights.reduce((all, one) => all + one, 0);
const wholeOf = ({ head, columns, rows, notes }: KeyHeights) => head + columns + sum(rows) + sum(notes);

/** How many of these, from a place on, fit. */
function fitting(heights: readonly number[], from: number, room: number): number {
  let to = from;
  for (let left = room; to < heights.length && heights[to]! <= left; to++) left -= heights[to]!;
  return to;
}

/** Tables on pages: whole where they can be; a longer one goes on with the heads of its columns again. */
export function packKeys(tables: readonly KeyHeights[], room: number, used: number): KeyPiece[][] {
  const pages: KeyPiece[][] = [[]];
  let left = room - used;
  const turn = () => {
    pages.push([]);
    left = room;
  };
  tables.forEach((table, at) => {
    const { head, columns, rows, notes } = table;
    const whole = wholeOf(table);
    if (whole > left && pages.at(-1)!.length > 0) turn();
    if (whole <= left) {
      pages.at(-1)!.push({ at, rows: [0, rows.length], notes: [0, notes.length] });
      left -= whole;
      return;
    }
    for (let row = 0, note = 0; row < rows.length || note < notes.length; ) {
      const over = head + (row < rows.length ? columns : 0);
      // On an empty page at least one goes ahead, however long.
      const to = Math.max(fitting(rows, row, left - over), Math.min(row + 1, rows.length));
      const below = left - over - sum(rows.slice(row, to));
      const last =
        to < rows.length ? note : Math.max(fitting(notes, note, below), row === to ? note + 1 : note);
      pages.at(-1)!.push({ at, rows: [row, to], notes: [note, last] });
      left = below - sum(notes.slice(note, last));
      [row, note] = [to, last];
      if (row < rows.length || note < notes.length) turn();
    }
  });
  return pages;
}
