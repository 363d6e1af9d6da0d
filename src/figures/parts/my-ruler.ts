/**
 * The rulers that sizes are written on in this browser: one for each reader of a page, who sees one of the two. Pages are
 * built with the usual ones; the header sets it to the reader's own when it wakes, and whatever shows a size follows.
 */
import { signal } from '@preact/signals';
import { type FormatOptions, type RulerPair, type UnitSystem, usualRuler } from '../../units/index.ts';

export const shownRulers = signal<RulerPair>(usualRuler);

/** How one reader sees a number: on their own ruler, where it is written on one. */
export const seenBy = (system: UnitSystem, options: Omit<FormatOptions, 'system'>): FormatOptions => ({
  ...options,
  system,
  ...((options.as === 'size' || options.as === 'left') && { ruler: shownRulers.value[system] }),
});
