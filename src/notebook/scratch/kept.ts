/** The reader's scratch cells: one list in the browser, kept on the device, brought by a link or a file. */
import { signal } from '@preact/signals';
import { load, onOtherTab, save } from '../storage.ts';
import {
  type Cell,
  type DecodedCells,
  decodeCells,
  decodeCellsLink,
  encodeCellsLink,
  mostCells,
  writeCells,
} from './cells.ts';

const key = 'scratch';
/** What stood here before a link or a file took its place. */
const keyBefore = 'scratch.before';

export interface KeptCell {
  /** Stays with the cell while the page is open. */
  readonly id: number;
  readonly cell: Cell;
}

let lastId = 0;
const withIds = (cells: readonly Cell[]): readonly KeptCell[] =>
  cells.map((cell) => ({ id: ++lastId, cell }));
const blank: Cell = { type: 'sum', text: '' };

export const scratch = signal<readonly KeptCell[]>([{ id: 0, cell: blank }]);
/** The cell taken out last, with its place: it can be put back. */
export const takenOut = signal<{ readonly kept: KeptCell; readonly at: number } | undefined>(undefined);
/** Cells that stood here before others were opened. */
export const before = signal<readonly Cell[] | undefined>(undefined);
/** What the reader should know about cells that could not be read. */
export const scratchSays = signal('');

export const cellsNow = (): readonly Cell[] => scratch.peek().map(({ cell }) => cell);
const isBlank = ({ text }: Cell) => text.trim() === '';
/** Whether there is anything in the cells. */
export const isUsed = (): boolean => !cellsNow().every(isBlank);

function put(cells: readonly KeptCell[]): void {
  scratch.value = cells.length > 0 ? cells : withIds([blank]);
  save(key, writeCells(cellsNow()));
}

let awake = false;
/** Reads what the device keeps, then what the address brings. Runs once; does nothing on the server. */
export function loadScratch(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  const text = load(key);
  if (text !== undefined) {
    const decoded = decodeCells(text, 'kept on this device');
    if (decoded.ok && decoded.cells.length > 0) scratch.value = withIds(decoded.cells);
    if (!decoded.ok) {
      save(`${key}.damaged`, text);
      scratchSays.value = `${decoded.message} Empty cells are shown instead; a copy of the text is kept.`;
    } else sayDropped(decoded.dropped);
  }
  const former = load(keyBefore);
  const read = former === undefined ? undefined : decodeCells(former, 'kept on this device');
  if (read?.ok && read.cells.length > 0) before.value = read.cells;
  openLink();
  addEventListener('hashchange', openLink);
  onOtherTab(key, (changed) => {
    const decoded = decodeCells(changed, 'kept on this device');
    if (decoded.ok && JSON.stringify(decoded.cells) !== JSON.stringify(cellsNow()))
      scratch.value = withIds(decoded.cells);
  });
}

function sayDropped(dropped: number): void {
  if (dropped > 0)
    scratchSays.value = `${dropped === 1 ? 'One cell' : `${dropped} cells`} could not be used and ${dropped === 1 ? 'is' : 'are'} left out.`;
}

/** Opens the cells in the address, if there are any, and takes them out of there. */
function openLink(): void {
  const fragment = new URLSearchParams(location.hash.slice(1));
  const link = fragment.get(key);
  if (link === null) return;
  openCells(decodeCellsLink(link));
  fragment.delete(key);
  const rest = fragment.toString().replace(/=(?=&|$)/g, '');
  history.replaceState(history.state, '', `${location.pathname}${location.search}${rest ? `#${rest}` : ''}`);
}

/** Puts other cells in the place of the reader's, which are set aside. @returns whether they could be read */
export function openCells(decoded: DecodedCells): boolean {
  if (!decoded.ok) {
    scratchSays.value = `${decoded.message} Your own cells are as they were.`;
    return false;
  }
  const own = cellsNow();
  if (isUsed() && JSON.stringify(own) !== JSON.stringify(decoded.cells)) {
    before.value = own;
    save(keyBefore, writeCells(own));
  }
  scratchSays.value = '';
  put(withIds(decoded.cells));
  sayDropped(decoded.dropped);
  return true;
}

/** Changes places with the cells that stood here before. */
export function bringBack(): void {
  if (before.value) openCells({ ok: true, cells: before.value, dropped: 0 });
}

export function setCell(id: number, cell: Cell): void {
  put(scratch.value.map((one) => (one.id === id ? { id, cell } : one)));
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

/** A link to this page that carries the cells; undefined where it would be too long. */
export function linkToScratch(page: string): string | undefined {
  const link = encodeCellsLink(cellsNow());
  return link && `${page.split('#')[0]}#${key}=${link}`;
}
