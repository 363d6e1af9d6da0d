/** A page gone through by the tab key alone: where the focus is, whether it shows, and whether anything lies on it. */
import type { Page } from '@playwright/test';

/** What is wrong with the control that has the focus; runs in the page. @returns undefined where there is none */
const faultsOfFocused = (page: Page) =>
  page.evaluate(() => {
    const focused = document.activeElement as HTMLElement | null;
    if (!focused || focused === document.body) return undefined;
    const faults: string[] = [];
    const text = ((focused as HTMLInputElement).labels?.[0]?.textContent || focused.textContent).trim();
    const name = `${focused.localName}.${focused.getAttribute('class') ?? ''} “${(focused.ariaLabel || text).slice(0, 40)}”`;
    /** The label of a field that is drawn as its label is what a reader sees of it. */
    const seen = [focused, ...((focused as HTMLInputElement).labels ?? [])].filter((one) => {
      const { width, height } = one.getBoundingClientRect();
      return width > 2 && height > 2 && getComputedStyle(one).opacity !== '0';
    });
    const shown = seen.at(0) ?? focused;
    const rect = shown.getBoundingClientRect();

    // Layers stay where they are while the page moves: what has the focus must not lie below one.
    const { left, right, top, bottom, width, height } = rect;
    const inView = bottom > 1 && top < innerHeight - 1 && right > 1 && left < innerWidth - 1;
    if (!inView) faults.push('is out of sight');
    const [from, to] = [Math.max(top, 0), Math.min(bottom, innerHeight)];
    const x = (Math.max(left, 0) + Math.min(right, innerWidth)) / 2;
    for (const share of [0.1, 0.5, 0.9]) {
      let over = document.elementFromPoint(x, from + (to - from) * share);
      if (!over || shown.contains(over) || over.contains(shown)) continue;
      for (; over && !over.contains(shown); over = over.parentElement)
        if (/sticky|fixed/.test(getComputedStyle(over).position)) {
          faults.push(`lies under ${over.localName}.${over.className}`);
          break;
        }
    }

    const marks = [
      focused,
      ...seen,
      focused.nextElementSibling,
      focused.closest('form, fieldset, label, tr, svg'),
    ];
    const isMarked = marks.some((one) => {
      if (!one) return false;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(one);
      return (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 1) || boxShadow !== 'none';
    });
    if (!isMarked && focused.tabIndex >= 0) faults.push('has no mark of the focus');

    // WCAG 2.2, 2.5.8, without links in a line of text.
    const isTarget = focused.matches('button, input, select, textarea, summary') || focused.role === 'slider';
    const sides = (seen.length > 0 ? seen : [focused]).map((one) => one.getBoundingClientRect());
    if (isTarget && !sides.some((side) => side.width >= 23.9 && side.height >= 23.9))
      faults.push(`is ${width.toFixed()} x ${height.toFixed()} px`);
    return { id: name, faults: faults.map((fault) => `${name} ${fault}`) };
  });

/** Goes through the page once. @returns how many controls were met, and what is wrong with them */
export async function tabThrough(page: Page, most = 400) {
  const faults = new Set<string>();
  let met = 0;
  await page.evaluate(() => {
    (document.activeElement as HTMLElement | null)?.blur();
    scrollTo(0, 0);
  });
  for (; met < most; met++) {
    await page.keyboard.press('Tab');
    const found = await faultsOfFocused(page);
    if (!found) break;
    for (const fault of found.faults) faults.add(fault);
  }
  return { met, faults: [...faults] };
}
