/** The figures of a page as slides: in the order of the page, each with its name and the question it stands under. */

export interface Slide {
  readonly name: string;
  /** The element that fills the wall: the card of a guess, the island of a lab, one state of a rule's figure. */
  readonly figure: HTMLElement;
  /** Something is covered here until it is opened. */
  readonly isGuess: boolean;
  readonly ask: string;
}

/** What stays as it is: patterns and arrowheads of drawings, and what is said about the box or the device. */
const kept = '.definitions, script, style, template';

/** The figures that a link leads to (`prose/OnTheWall.astro`): two for a rule that is drawn in two states. */
function figuresOf(link: HTMLAnchorElement): readonly HTMLElement[] {
  const around = link.parentElement!;
  if (around.matches('.guess-card')) return [around];
  const before = link.previousElementSibling as HTMLElement;
  return before.matches('.rule-figure') ? [...before.querySelectorAll('figure')] : [before];
}

export const slidesOfPage = (): readonly Slide[] =>
  [...document.querySelectorAll<HTMLAnchorElement>('a.to-wall')].flatMap((link) =>
    figuresOf(link).map((figure, at) => ({
      name: link.hash.slice('#wall='.length) + (at > 0 ? `-${at + 1}` : ''),
      figure,
      isGuess: figure.matches('.guess-card'),
      ask: (
        figure.querySelector('.lab > h2') ??
        figure.closest('.lesson-step')?.querySelector('h2') ??
        document.querySelector('h1')
      )?.textContent as string,
    })),
  );

const off = 'data-wall-off';
const way = 'data-wall-way';

/** Takes everything but this figure from the screen, also for those who hear the page. The way to it stays, without a box of its own. */
export function showAlone({ figure }: Slide): void {
  figure.classList.add('on-wall');
  for (let at: HTMLElement = figure; at !== document.body; at = at.parentElement!) {
    const around = at.parentElement!;
    for (const other of around.children)
      if (other !== at && !other.matches(kept)) other.setAttribute(off, '');
    if (around === document.body) break;
    around.setAttribute(way, around instanceof HTMLDetailsElement && !around.open ? 'closed' : '');
  }
  for (const fold of foldsOnWay()) fold.open = true;
}

/** What the figure lies folded in. A guess folds its reason by itself, so it is to be watched. */
export const foldsOnWay = () => document.querySelectorAll<HTMLDetailsElement>(`details[${way}]`);

/** Gives the page back. */
export function showAll(): void {
  document.querySelector('.on-wall')?.classList.remove('on-wall');
  for (const fold of document.querySelectorAll<HTMLDetailsElement>(`details[${way}=closed]`))
    fold.open = false;
  for (const name of [off, way])
    for (const element of document.querySelectorAll(`[${name}]`)) element.removeAttribute(name);
}
