/**
 * The current box: one signal in the browser, read and changed by every widget, kept on the device, carried by links.
 *
 * A box from a link becomes the current one, the former box stands one step back and, where the reader had one of their
 * own, among the kept designs; then the link leaves the address, so that a reload shows the box as it is now.
 */
import { signal } from '@preact/signals';
import { exampleBox, exampleFor, isExample } from '../box/subjects/example.ts';
import type { Box } from '../box/subjects/inputs.ts';
import { damaged, keepAside } from './aside.ts';
import { type Decoded, decodeLink, decodeStore, encodeLink, encodeStore } from './codec.ts';
import { loadDesigns, setAside } from './designs.ts';
import { remember, stepBack, stepForward } from './history.ts';
import { settle } from './settle.ts';
import { isSaving, load, onOtherTab, save } from './storage.ts';
import { units } from './units.ts';

const key = 'box';

export const currentBox = signal<Box>(exampleBox);

/** Why the last change was not made as wanted; undefined where it was. */
export const refused = signal<string | undefined>(undefined);

let awake = false;

/** Loads the box kept on this device, then the one of the link. Runs once; does nothing on the server. */
export function loadBox(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  const kept = load(key);
  if (kept !== undefined) {
    const decoded = decodeStore(kept);
    if (decoded.ok) currentBox.value = decoded.box;
    if (!decoded.ok || decoded.dropped.length > 0) keepAside(key, kept);
    tellDamage(decoded, kept, 'The example is shown instead; what was kept is set aside.');
  }
  // An untouched example is the one of the reader's units, also when they choose others.
  units.subscribe((system) => {
    if (isExample(currentBox.peek())) currentBox.value = exampleFor(system);
  });
  loadDesigns();
  // The first call tells what was found: the example must not write over a store that could not be read.
  let found = true;
  currentBox.subscribe((box) => {
    if (!found || !isExample(box)) save(key, encodeStore(box));
    found = false;
  });
  openLink();
  addEventListener('hashchange', openLink);
  // Another tab changed the box: follow it, unless what it wrote cannot be read. An erased one is the example again.
  onOtherTab(key, (text) => {
    if (text === '' && !isExample(currentBox.peek())) {
      found = true;
      currentBox.value = exampleFor(units.peek());
    }
    const decoded = decodeStore(text);
    if (decoded.ok) currentBox.value = decoded.box;
    else if (text !== '') keepAside(key, text);
  });
  carryAlong();
}

function tellDamage(decoded: Decoded, text: string, then: string): void {
  if (!decoded.ok) damaged.value = { message: `${decoded.message} ${then}`, text };
  else if (decoded.dropped.length > 0)
    damaged.value = {
      message: `Some of it could not be used and is as in the example: ${decoded.dropped.join(', ')}. The rest is as it was.`,
      text,
    };
}

/** Opens the box in the address, if there is one, and takes it out of there. */
function openLink(): void {
  const fragment = new URLSearchParams(location.hash.slice(1));
  const link = fragment.get('box');
  if (link === null) return;
  const decoded = decodeLink(link);
  const former = currentBox.peek();
  if (decoded.ok && JSON.stringify(decoded.box) !== JSON.stringify(former)) {
    // A box that this site itself carried from page to page is no new one.
    if (!fragment.has('carried')) {
      if (!isExample(former)) setAside(former);
      remember(former, decoded.box, performance.now());
    }
    currentBox.value = decoded.box;
  }
  tellDamage(decoded, link, 'Your own box is as it was.');
  fragment.delete('box');
  fragment.delete('carried');
  const rest = fragment.toString().replace(/=(?=&|$)/g, '');
  history.replaceState(history.state, '', `${location.pathname}${location.search}${rest ? `#${rest}` : ''}`);
}

/** Where the device keeps nothing, a link inside the site takes the box along in its address. */
function carryAlong(): void {
  addEventListener(
    'click',
    (event) => {
      const anchor = event.target instanceof Element ? event.target.closest('a') : null;
      if (isSaving.peek() || !anchor || anchor.origin !== location.origin || anchor.hash) return;
      const link = encodeLink(currentBox.peek());
      if (link) anchor.hash = `box=${link}&carried`;
    },
    true,
  );
}

/** Changes some inputs of the current box, as far as they can be; `undo` takes it back. The one place where it changes. */
export function change(wanted: Partial<Box>): void {
  const { inputs, notes } = settle(wanted);
  refused.value = notes.length > 0 ? notes.join(' ') : undefined;
  if (Object.keys(inputs).length === 0) return;
  remember(currentBox.value, inputs, performance.now());
  currentBox.value = { ...currentBox.value, ...inputs };
}

/** One step back, or forward again; nothing at the ends. */
export function undo(): void {
  currentBox.value = stepBack(currentBox.value) ?? currentBox.value;
}
export function redo(): void {
  currentBox.value = stepForward(currentBox.value) ?? currentBox.value;
}

/** A link to this page, or the one given, that carries the current box; `undefined` where it would be too long. */
export function linkToBox(page: string): string | undefined {
  const link = encodeLink(currentBox.value);
  return link && `${page.split('#')[0]}#box=${link}`;
}
