/** Leads to the control of one input, out of its fold, once its part is drawn. */

/** Drawings of the page within which a part and its fold have been drawn. */
const most = 20;

/** @param panel what the parts are drawn in; an input that the box does not have leads nowhere */
export function leadToInput(panel: HTMLElement, input: string, left = most): void {
  const control = panel.querySelector<HTMLElement>(`[data-input="${CSS.escape(input)}"]`);
  if (control) {
    control.scrollIntoView({ block: 'center', behavior: 'instant' });
    control.querySelector<HTMLElement>('input, select')?.focus({ preventScroll: true });
    return;
  }
  const fold = panel.querySelector<HTMLDetailsElement>('details.more-inputs');
  if (fold) fold.open = true;
  if (left > 0) requestAnimationFrame(() => leadToInput(panel, input, left - 1));
}
