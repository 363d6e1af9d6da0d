/**
 * Whether the reader wants more space between letters, words and lines. Kept on the device; `layouts/Base.astro` sets
 * `data-spacing` before the first paint, and `styles/text-spacing.css` does the rest.
 */
import { signal } from '@preact/signals';
import { load, onOtherTab, save } from './storage.ts';

const key = 'spacing';
const wide = 'wide';

/** Whether text stands wide. */
export const isWide = signal(load(key) === wide);

function show(is: boolean): void {
  isWide.value = is;
  if (is) document.documentElement.dataset.spacing = wide;
  else delete document.documentElement.dataset.spacing;
}

export function spaceText(is: boolean): void {
  show(is);
  save(key, is ? wide : 'usual');
}

/** Follows the choice made in another tab. */
export const followSpacing = (): void => onOtherTab(key, (text) => show(text === wide));
