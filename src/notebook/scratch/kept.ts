/** The reader's scratch cells: one list in the browser, changed cell by cell and kept on the device. */
import { signal } from '@preact/signals';
import { save } from '../storage.ts';
import { type Cell, longestNote, mostCells, writeCells } from './cells.ts';
import { longestText } from './tidy.ts';

/** Under which the device keeps the cells, and a link carries them. */
export const key = 'scratch';

export interface KeptCell {
  /** Stays with the cell while the page is open. */
  readonly id: number;
  readonly cell: Cell;
}

let lastId = 0;
export const withIds = (cells: readonly Cell[]): readonly KeptCell[] =>
  cells.map((cell) => ({ id: ++lastId, cell }));
/** What a sheet begins with. */
export const blank: Cell = { type: 'sum', text: '' };

export const scratch = signal<readonly KeptCell[]>([{ id: 0, cell: blank }]);
/** The cell taken out last, with its place: it can be put back. */
export const takenOut = signal<{ readonly kept: KeptCell; readonly at: number } | undefined>(undefined);
/** What the reader should know about cells that could not be read. */
export const scratchSays = signal('');

export const cellsNow = (): readonly Cell[] => scratch.peek().map(({ cell }) => cell);
const isBlank = ({ text }: Cell) => text.trim() === '';
/** Whether there is anything in the cells. */
export const isUsed = (): boolean => !cellsNow().every(isBlank);

/** Puts a list of cells in the place of the one before, and keeps it. */
export function put(cells: readonly KeptCell[]): void {
  scratch.value = cells.length > 0 ? cells : withIds([blank]);
  save(key, writeCells(cellsNow()));
}

/** A cell as long as it can be read back: names from the list are put in without asking the field. */
function readable(cell: Cell): Cell {
  const most = cell.type === 'note' ? longestNote : longestText;
  if (cell.text.length <= most) return cell;
  scratchSays.value = `A cell holds ${most} characters: what is longer was left out.`;
  return { ...cell, text: cell.text.slice(0, most) };
}

export function setCell(id: number, cell: Cell): void {
  put(scratch.value.map((one) => (one.id === id ? { id, cell: readable(cell) } : one)));
}

/** Keeps what is being typed in a cell, should the page end now; nothing is worked out from it. */
export function keepDraft(id: number, text: string): void {
  const cells = scratch.peek().map((one) => (one.id === id ? { ...one.cell, text } : one.cell));
  save(key, writeCells(cells));
}

/** Adds a cell below another, or at the end. @returns its id; undefined where there is no room */
export function addCell(cell: Cell, below?: number): number | undefined {
  const cells = scratch.value;
  if (cells.length >= mostCells) {
    scratchSays.value = `There is room for ${mostCells} cells. Take one out first, or save these as a file and begin anew.`;
    return undefined;
  }
  const found = cells.findIndex(({ id }) => id === below);
  const [added] = withIds([cell]);
  const at = found < 0 ? cells.length : found + 1;
  put([...cells.slice(0, at), added!, ...cells.slice(at)]);
  return added!.id;
}

/** The cell that was written at the end of a lesson. */
export const cellOfLesson = (lesson: string): KeptCell | undefined =>
  scratch.value.find(({ cell }) => cell.type === 'sum' && cell.from === lesson);

/** Keeps what was written at the end of a lesson: in the lesson's cell, which joins the others with the first change. */
export function writeAtLesson(lesson: string, text: string): void {
  const kept = cellOfLesson(lesson);
  const cell: Cell = { type: 'sum', text, from: lesson };
  if (kept) setCell(kept.id, cell);
  else if (isUsed()) addCell(cell);
  else put(withIds([cell]));
}

/** Keeps what is being typed at the end of a lesson, should the page end now. */
export function keepDraftAtLesson(lesson: string, text: string): void {
  const kept = cellOfLesson(lesson);
  if (kept) keepDraft(kept.id, text);
  else {
    const others = isUsed() ? scratch.peek().map(({ cell }) => cell) : [];
    save(key, writeCells([...others, { type: 'sum', text, from: lesson }]));
  }
}

export function takeOut(id: number): void {
  const at = scratch.value.findIndex((one) => one.id === id);
  takenOut.value = { kept: scratch.value[at]!, at };
  put(scratch.value.filter((one) => one.id !== id));
}

/** Puts the cell taken out last back in its place. */
export function putBack(): void {
  const out = takenOut.value;
  if (!out) return;
  takenOut.value = undefined;
  const cells = scratch.value.filter(({ cell }) => scratch.value.length > 1 || !isBlank(cell));
  put([...cells.slice(0, out.at), out.kept, ...cells.slice(out.at)]);
}

/** Moves a cell up (−1) or down (1). */
export function moveCell(id: number, by: 1 | -1): void {
  const cells = [...scratch.value];
  const at = cells.findIndex((one) => one.id === id);
  const [one] = cells.splice(at, 1);
  cells.splice(Math.max(0, at + by), 0, one!);
  put(cells);
}
