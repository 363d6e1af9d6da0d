/** The current box: one signal in the browser, read and changed by every widget, kept on the device, carried by links. */
import { signal } from '@preact/signals';
import { type Box, exampleBox } from '../box/box.ts';
import { type Decoded, decodeLink, decodeStore, encodeLink, encodeStore } from './codec.ts';
import { remember, stepBack, stepForward } from './history.ts';
import { keep, recall } from './storage.ts';

const key = 'box';

export const currentBox = signal<Box>(exampleBox);

/** Something the reader should know about a box that could not be read, with the text that was found. */
export const damaged = signal<{ message: string; text: string } | undefined>(undefined);

let awake = false;

/** Loads the box of the link, else the one kept on this device. Runs once; does nothing on the server. */
export function wake(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  const linked = new URLSearchParams(location.hash.slice(1)).get('box');
  if (linked !== null) accept(decodeLink(linked), linked);
  else {
    const kept = recall(key);
    if (kept !== undefined) accept(decodeStore(kept), kept);
  }
  // The first call tells what was found: the example must not write over a store that could not be read.
  let found = true;
  currentBox.subscribe((box) => {
    if (!found || box !== exampleBox) keep(key, encodeStore(box));
    found = false;
  });
  addEventListener('hashchange', () => {
    const link = new URLSearchParams(location.hash.slice(1)).get('box');
    if (link !== null) accept(decodeLink(link), link);
  });
  // Another tab changed the box: follow it, unless what it wrote cannot be read.
  addEventListener('storage', (event) => {
    const decoded = event.key?.endsWith(key) && event.newValue ? decodeStore(event.newValue) : undefined;
    if (decoded?.ok) currentBox.value = decoded.box;
  });
}

function accept(decoded: Decoded, text: string): void {
  if (decoded.ok) currentBox.value = decoded.box;
  else damaged.value = { message: decoded.message, text };
}

/** Changes some inputs of the current box; `undo` takes it back. */
export function change(inputs: Partial<Box>): void {
  remember(currentBox.value, Object.keys(inputs), performance.now());
  currentBox.value = { ...currentBox.value, ...inputs };
}

/** One step back, or forward again; nothing at the ends. */
export function undo(): void {
  currentBox.value = stepBack(currentBox.value) ?? currentBox.value;
}
export function redo(): void {
  currentBox.value = stepForward(currentBox.value) ?? currentBox.value;
}

/** A link to this page, or the one given, that carries the current box. */
export function linkToBox(page: string): string {
  return `${page.split('#')[0]}#box=${encodeLink(currentBox.value)}`;
}
