/**
 * A figure on the wall, in projector view: the page's own figure, alone on the screen, driven by a presenter's two keys. The
 * figures of a page are its slides. The guesses of a class are nobody's: the reader's own come back when the wall is left.
 * Over 150 lines: coming, going, and what every key does to the one figure.
 */
import { render } from 'preact';
import { currentBox } from '../../notebook/current.ts';
import { setGuessesAside } from '../../notebook/predictions.ts';
import { addStyle } from '../kit/add-style.ts';
import { Foot, Question } from './Foot.tsx';
import { fitToWall, unfit } from './fit.ts';
import { type Acts, actOf } from './keys.ts';
import { readingSize } from './reading-size.ts';
import { dropScheme, setScheme } from './scheme.ts';
import { foldsOnWay, type Slide, showAll, showAlone, slidesOfPage } from './slides.ts';
import { type Standing, setStanding, standingOf } from './standing.ts';
import { dropHands, isOpen, note, panel, place, slide } from './state.ts';
import css from './wall.css?inline';

const root = document.documentElement;
const head = document.createElement('div');
const foot = document.createElement('div');
for (const part of [head, foot]) part.className = 'wall-part';
let takeOffStyle: (() => void) | undefined;

/** How each figure stood when it came to the wall, and the box with it. */
const first = new Map<string, { standing: Standing; box: typeof currentBox.value }>();
let giveBack: (() => void) | undefined;
let layout: ReturnType<typeof fitToWall> | undefined;
let isDark = false;

/** An island has no box of its own. */
const boxOf = (figure: Element) => figure.querySelector('.lab') ?? figure;

const awake = async (figure: Element) => {
  const island = figure.matches('astro-island') ? figure : figure.querySelector('astro-island');
  while (island?.hasAttribute('ssr')) await new Promise((done) => setTimeout(done, 50));
};

/** Goes where the address says: to a figure on the wall, to one as it stood there, or back to the page. */
export async function follow(): Promise<void> {
  const fragment = new URLSearchParams(location.hash.slice(1));
  const at = fragment.get('at');
  const name = fragment.get('wall') ?? at;
  const found = slidesOfPage().find((one) => one.name === name);
  if (!found) return leave();
  await awake(found.figure);
  if (at === null) return show(found);
  leave();
  found.figure.closest('details')?.setAttribute('open', '');
  boxOf(found.figure).scrollIntoView();
  const set = fragment.get('set');
  if (set) await setStanding(found.figure, set.split(','));
}

function show(next: Slide): void {
  if (slide.value) put(slide.value);
  else enter();
  const slides = slidesOfPage();
  showAlone(next);
  slide.value = next;
  place.value = { at: slides.findIndex(({ name }) => name === next.name), of: slides.length };
  panel.value = undefined;
  note.value = '';
  layout = undefined;
  if (!first.has(next.name))
    first.set(next.name, { standing: standingOf(next.figure), box: currentBox.value });
  next.figure.prepend(head);
  next.figure.append(foot);
  watcher.observe(next.figure, { childList: true, characterData: true, subtree: true });
  stateWatcher.observe(next.figure, { attributes: true, attributeFilter: ['data-state'] });
  for (const fold of foldsOnWay())
    stateWatcher.observe(fold, { attributes: true, attributeFilter: ['open'] });
  look();
  focus();
}

/** Takes a figure from the wall, back into its page. */
function put({ figure }: Slide): void {
  watcher.disconnect();
  stateWatcher.disconnect();
  unfit(figure);
  showAll();
  head.remove();
  foot.remove();
}

const focus = () =>
  setTimeout(() => foot.querySelector<HTMLElement>('nav')?.focus({ preventScroll: true }), 60);

let waits = false;
/** What the figure shows has changed: its place may have to. */
function look(): void {
  const now = slide.value;
  if (!now) return;
  isOpen.value = now.isGuess && now.figure.dataset.state !== 'blank';
  if (waits) return;
  waits = true;
  requestAnimationFrame(() => {
    waits = false;
    if (!slide.value) return;
    root.style.setProperty('--wall-size', `${readingSize(innerWidth, innerHeight)}px`);
    layout = fitToWall(slide.value.figure, layout);
  });
}
const again = () => {
  layout = undefined;
  look();
};
const watcher = new MutationObserver(look);
const stateWatcher = new MutationObserver(() => {
  for (const fold of foldsOnWay()) if (!fold.open) fold.open = true;
  look();
});

const isSet = (figure: Element) =>
  Boolean(
    figure.querySelector('.outcomes input:checked') ||
      figure.querySelector<HTMLInputElement>('.guess-field input')?.value,
  );
const press = (figure: Element, selector: string) => figure.querySelector<HTMLElement>(selector)?.click();

function turn(by: 1 | -1): void {
  const slides = slidesOfPage();
  const next = slides[place.value.at + by];
  if (!next) {
    note.value = by > 0 ? 'That was the last figure.' : 'This is the first figure.';
    return;
  }
  history.replaceState(history.state, '', `#wall=${next.name}`);
  void awake(next.figure).then(() => show(next));
}
const acts: Acts = {
  on: () => {
    const now = slide.value!;
    panel.value = undefined;
    if (now.isGuess && !isOpen.value)
      press(now.figure, isSet(now.figure) ? '.guess-bar [type=submit]' : '.guess-bar button.link');
    else turn(1);
  },
  back: () => {
    panel.value = undefined;
    if (isOpen.value) cover();
    else turn(-1);
  },
  hands: () => {
    // Hands are counted before the truth is seen.
    if (slide.value!.isGuess && isOpen.value) cover();
    panel.value = slide.value!.isGuess && panel.value !== 'hands' ? 'hands' : undefined;
  },
  reset: () => {
    const now = slide.value!;
    if (isOpen.value) cover();
    dropHands(now);
    const { standing, box } = first.get(now.name)!;
    if (currentBox.value !== box) currentBox.value = box;
    void setStanding(now.figure, standing);
  },
  code: () => {
    panel.value = panel.value === 'code' ? undefined : 'code';
  },
  dark: () => {
    isDark = !isDark;
    setScheme(isDark ? 'dark' : 'light');
  },
  leave: () => {
    if (panel.value) panel.value = undefined;
    else leave();
  },
};
function cover(): void {
  press(slide.value!.figure, '.guess-bar button.quiet');
  focus();
}

function onKey(event: KeyboardEvent): void {
  const act = actOf(event);
  if (!act) return;
  event.preventDefault();
  event.stopPropagation();
  acts[act]();
}
/** The event's own button without a mark shows it too: nobody has to guess on the wall. */
function onClick(event: MouseEvent): void {
  const button = event.target instanceof Element && event.target.closest('.guess-bar [type=submit]');
  if (!button || isSet(slide.value!.figure)) return;
  event.preventDefault();
  event.stopPropagation();
  acts.on();
}
/** What a class opens is no step that the reader has done. */
const keepToItself = (event: Event) => event.stopPropagation();

function enter(): void {
  giveBack = setGuessesAside();
  root.dataset.wall = '';
  takeOffStyle = addStyle(css);
  setScheme(isDark ? 'dark' : 'light');
  render(<Question />, head);
  render(<Foot acts={acts} />, foot);
  addEventListener('keydown', onKey, true);
  addEventListener('click', onClick, true);
  addEventListener('guess', keepToItself, true);
  addEventListener('resize', again);
}

/** Back to the page, at the figure that was on the wall. */
function leave(): void {
  const last = slide.value;
  if (!last) return;
  put(last);
  slide.value = undefined;
  panel.value = undefined;
  giveBack?.();
  delete root.dataset.wall;
  takeOffStyle?.();
  dropScheme();
  removeEventListener('keydown', onKey, true);
  removeEventListener('click', onClick, true);
  removeEventListener('guess', keepToItself, true);
  removeEventListener('resize', again);
  if (location.hash.startsWith('#wall='))
    history.replaceState(history.state, '', location.pathname + location.search);
  boxOf(last.figure).scrollIntoView({ block: 'center' });
  document
    .querySelector<HTMLElement>(`a.to-wall[href="#wall=${last.name.replace(/-2$/, '')}"]`)
    ?.focus({ preventScroll: true });
}
