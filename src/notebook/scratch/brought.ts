/** Cells that come from elsewhere: from the device, a link or a file. What stood there before is set aside. */
import { signal } from '@preact/signals';
import { keepAside } from '../aside.ts';
import { load, onOtherTab, save } from '../storage.ts';
import {
  type Cell,
  type DecodedCells,
  decodeCells,
  decodeCellsLink,
  encodeCellsLink,
  writeCells,
} from './cells.ts';
import { blank, cellsNow, isUsed, key, put, scratch, scratchSays, withIds } from './kept.ts';

/** What stood here before a link or a file took its place. */
const keyBefore = 'scratch.before';

/** Cells that stood here before others were opened. */
export const before = signal<readonly Cell[] | undefined>(undefined);

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
    } else if (decoded.dropped > 0) {
      keepAside(key, text);
      sayDropped(decoded.dropped);
    }
  }
  const former = load(keyBefore);
  const read = former === undefined ? undefined : decodeCells(former, 'kept on this device');
  if (read?.ok && read.cells.length > 0) before.value = read.cells;
  openLink();
  addEventListener('hashchange', openLink);
  onOtherTab(key, (changed) => {
    if (changed === '') scratch.value = withIds([blank]);
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

/** A link to this page that carries the cells; undefined where it would be too long. */
export function linkToScratch(page: string): string | undefined {
  const link = encodeCellsLink(cellsNow());
  return link && `${page.split('#')[0]}#${key}=${link}`;
}
