/** The keys of the question field: arrows go through the answers and back, Enter goes to the first, letters go on with the question. */
import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';

/** @param inside some element of the field's dialog */
export function useArrows(inside: RefObject<HTMLElement>): void {
  useEffect(() => {
    const dialog = inside.current?.closest('dialog');
    const field = dialog?.querySelector('input');
    if (!dialog || !field) return undefined;
    const links = () => [...dialog.querySelectorAll<HTMLAnchorElement>('a.answer-title')];
    const onKey = (event: KeyboardEvent) => {
      const all = links();
      const at = all.indexOf(document.activeElement as HTMLAnchorElement);
      const isInField = document.activeElement === field;
      if (event.key === 'ArrowDown' && (isInField || at >= 0)) (all[at + 1] ?? all[at])?.focus();
      else if (event.key === 'ArrowUp' && at >= 0) (all[at - 1] ?? field).focus();
      // On a phone its keys go then, and all answers are in sight.
      else if (event.key === 'Enter' && isInField) all[0]?.focus();
      else {
        const isLetter = event.key.length === 1 && event.key !== ' ' && !event.ctrlKey && !event.metaKey;
        if (at >= 0 && isLetter) field.focus();
        return;
      }
      event.preventDefault();
    };
    dialog.addEventListener('keydown', onKey);
    return () => dialog.removeEventListener('keydown', onKey);
  }, []);
}
