/** How a reader's place in a page is found: by kind of control, name or words. Runs in the page, the same in each engine. */
// biome-ignore-all lint/performance/useDomNodeTextContent: what is seen counts, in the reader’s units.

export type Role = 'button' | 'link' | 'textbox' | 'slider' | 'radio' | 'combobox' | 'dialog' | 'region';

export interface Place {
  readonly role?: Role;
  /** What names it for a reader: its label, or else the words seen in it. As a whole, or as a pattern. */
  readonly name?: string | RegExp;
  /** Instead of a role. */
  readonly css?: string;
  readonly in?: Place;
}

/** A place that can be sent to a page, where patterns are texts. */
export interface SentPlace extends Omit<Place, 'name' | 'in'> {
  readonly name?: string;
  readonly pattern?: string;
  readonly in?: SentPlace;
}

export const sent = ({ name, in: within, ...place }: Place): SentPlace => ({
  ...place,
  ...(name instanceof RegExp ? { pattern: name.source } : name !== undefined && { name }),
  ...(within && { in: sent(within) }),
});

/** Everything that is seen and is such a place, in the order of the page. Uses nothing from outside itself. */
export function find(place: SentPlace): HTMLElement[] {
  const ofRole: Record<Role, string> = {
    button: 'button, summary, [role=button]',
    link: 'a[href]',
    textbox: 'input:not([type]), input[type=text], textarea',
    slider: 'input[type=range], [role=slider]',
    radio: 'input[type=radio], [role=radio]',
    combobox: 'select, [role=combobox]',
    dialog: 'dialog[open]',
    region: 'section',
  };
  const nameOf = (element: HTMLElement): string => {
    const label = element.getAttribute('aria-label');
    const by = element.getAttribute('aria-labelledby')?.split(' ') ?? [];
    const words =
      label ??
      (by.length
        ? by.map((id) => document.getElementById(id)?.innerText).join(' ')
        : (element as HTMLInputElement).labels?.length
          ? [...(element as HTMLInputElement).labels!].map((one) => one.innerText).join(' ')
          : element.innerText);
    return (words ?? '').replace(/\s+/g, ' ').trim();
  };
  const within: ParentNode[] = place.in ? find(place.in) : [document];
  return within
    .flatMap((part) => [
      ...part.querySelectorAll<HTMLElement>(place.css ?? (place.role ? ofRole[place.role] : '*')),
    ])
    .filter(
      (element) =>
        element.checkVisibility({ visibilityProperty: true }) &&
        (place.name === undefined || nameOf(element) === place.name) &&
        (place.pattern === undefined || new RegExp(place.pattern).test(nameOf(element))),
    );
}
