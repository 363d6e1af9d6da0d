/**
 * The keys of the wall. The two of a presenter are Page Down and Page Up, and work wherever the focus is; arrows do the
 * same where they move nothing else. Letters are the first of their button's word.
 */
export interface Acts {
  /** Opens what is covered; else the next figure. */
  readonly on: () => void;
  /** Covers what is open; else the figure before. */
  readonly back: () => void;
  readonly hands: () => void;
  readonly reset: () => void;
  readonly code: () => void;
  readonly dark: () => void;
  readonly leave: () => void;
}

const anywhere: Readonly<Record<string, keyof Acts>> = { PageDown: 'on', PageUp: 'back', Escape: 'leave' };
const whereNothingIsMoved: Readonly<Record<string, keyof Acts>> = {
  ArrowRight: 'on',
  ArrowDown: 'on',
  ArrowLeft: 'back',
  ArrowUp: 'back',
};
const letters: Readonly<Record<string, keyof Acts>> = {
  h: 'hands',
  r: 'reset',
  c: 'code',
  d: 'dark',
  // The black-screen key of a presenter.
  b: 'back',
  '.': 'back',
};

const isMoved = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.matches('input, select, textarea, [role=slider]');
const isTyped = (target: EventTarget | null) =>
  target instanceof HTMLElement &&
  target.matches('input:not([type=range], [type=radio], [type=checkbox]), select, textarea');

/** What a pressed key does; undefined where it is not the wall's. */
export function actOf({ key, target, altKey, ctrlKey, metaKey }: KeyboardEvent): keyof Acts | undefined {
  if (altKey || ctrlKey || metaKey) return undefined;
  return (
    anywhere[key] ??
    (isMoved(target) ? undefined : whereNothingIsMoved[key]) ??
    (isTyped(target) ? undefined : letters[key.toLowerCase()])
  );
}
