/**
 * How a figure fills the wall. Its drawings are placed in the largest room there is, beside what goes with them or above it,
 * and their text is brought to the least size that can be read from the back row; what does not fit beside it then is
 * left out, the least needed first. Nothing is drawn anew: a drawing is laid out for a phone, and a wall is a large phone.
 * Over 150 lines: the layouts are tried one after the other, and every step of a trial is here.
 */
import { readingSize } from './reading-size.ts';

/** What is left out, in this order, where there is no room. */
const spared = ['nothing', 'rows', 'second control', 'question'] as const;

interface Layout {
  /** Width of the column beside the drawings, in heights of the text; 0: below them. */
  readonly beside: number;
  readonly spare: number;
}
/** Narrow enough for a square drawing with readable text on 1024 x 768, and wider where there is more room. */
const columns = [9.3, 10.5, 12, 14, 17, 21, 26, 0];
const layouts: readonly Layout[] = spared.flatMap((_, spare) => columns.map((beside) => ({ beside, spare })));

const pad = 10;
const styled = new Set<HTMLElement | SVGElement>();
const names = [
  'position',
  'left',
  'top',
  'width',
  'height',
  'max-height',
  'max-width',
  '--wall-text',
  'grid-template-columns',
];
function style(element: HTMLElement | SVGElement, values: Record<string, string>): void {
  styled.add(element);
  for (const [name, value] of Object.entries(values)) element.style.setProperty(name, value, 'important');
}

const isSeen = (element: Element) => element.getClientRects().length > 0;
const aspectOf = (drawing: SVGSVGElement) => drawing.viewBox.baseVal.width / drawing.viewBox.baseVal.height;

interface Parts {
  /** Drawings above one another, each with what is laid over it. */
  readonly sheets: readonly { readonly element: HTMLElement | SVGElement; readonly aspect: number }[];
  /** Outcomes to pick from, below them. */
  readonly outcomes: HTMLElement | null;
  readonly drawings: readonly SVGSVGElement[];
}
function partsOf(figure: HTMLElement): Parts {
  const outcomes = figure.querySelector<HTMLElement>('.outcomes');
  const drawings = [...figure.querySelectorAll<SVGSVGElement>('svg.drawing')].filter(isSeen);
  const sheets = drawings
    .filter((drawing) => !outcomes?.contains(drawing))
    .map((drawing) => ({
      element: drawing.closest<HTMLElement>('.guess-sheet, .log-sheet') ?? drawing,
      aspect: aspectOf(drawing),
    }));
  return { sheets, outcomes, drawings };
}

/** Puts the drawings into so much room, from the upper left corner of the screen. */
function place({ sheets, outcomes }: Parts, width: number, height: number): void {
  const slope = sheets.reduce((sum, { aspect }) => sum + 1 / aspect, 0);
  // Above outcomes: as much as its text needs, and no more than half.
  const forSheets = outcomes ? Math.min(height * 0.52, Math.max(height * 0.4, slope * readable())) : height;
  const uniform = slope > 0 ? Math.min(width, (forSheets - pad * (sheets.length - 1)) / slope) : 0;
  /** Of several the flat ones get what their words need, and the tallest what is left. */
  const tallest = Math.min(...sheets.map(({ aspect }) => aspect));
  const flat = Math.min(width, Math.max(uniform, readable()));
  const left = sheets.reduce(
    (rest, { aspect }) => rest - pad - (aspect > tallest ? flat / aspect : 0),
    forSheets + pad,
  );
  const [wide, tall] =
    left * tallest > uniform * 0.6 ? [flat, Math.min(width, left * tallest)] : [uniform, uniform];
  const used = sheets.reduce(
    (sum, { aspect }) => sum + (aspect > tallest ? wide : tall) / aspect + pad,
    -pad,
  );
  let top = outcomes ? pad : pad + Math.max(0, (height - used) / 2);
  for (const { element, aspect } of sheets) {
    const own = aspect > tallest ? wide : tall;
    style(element, {
      position: 'fixed',
      left: `${pad + (width - own) / 2}px`,
      top: `${top}px`,
      width: `${own}px`,
      height: `${own / aspect}px`,
      'max-height': 'none',
      'max-width': 'none',
    });
    top += own / aspect + pad;
  }
  if (!outcomes) return;
  const drawn = outcomes.querySelectorAll<SVGSVGElement>('svg.drawing');
  const count = outcomes.querySelectorAll('.outcome').length;
  const high = height + pad - top;
  const aspect = aspectOf(drawn[0]!);
  /** Side by side, with the words below; two by two; or one below the other, with the words beside. */
  const ways = [1, 2, count]
    .filter((across) => count % across === 0)
    .map((across) => {
      const [w, h] = [width / across - 3 * pad, (high * across) / count - 3 * pad];
      const wide =
        across === 1
          ? Math.min(w * besideWords, h * aspect)
          : Math.min(w, (h - linesBelow * least()) * aspect);
      return { across, wide };
    });
  const { across } = ways.reduce((best, way) => (way.wide > best.wide ? way : best));
  outcomes.toggleAttribute('data-rows', across === 1);
  style(outcomes, {
    position: 'fixed',
    left: `${pad}px`,
    top: `${top}px`,
    width: `${width}px`,
    height: `${high}px`,
    'grid-template-columns': `repeat(${across}, minmax(0, 1fr))`,
  });
}
/** Share of an outcome's width for its drawing, with its words beside it; as in `wall.css`. */
const besideWords = 0.58;
/** Lines of words, tags and hands below an outcome's drawing. */
const linesBelow = 4.5;
const least = () => readingSize(innerWidth, innerHeight);
/** Width of a drawing whose text, laid out for a phone (`figures/parts/Drawing.tsx`), is as high as it must be here, px. */
const readable = () => (least() / 13) * 350;

/** Height of a label on the screen as it is drawn for a phone, px; of a drawing without any, a tenth of its width counts. */
const heightOfText = (drawing: SVGSVGElement) =>
  (drawing.querySelector('text:not(.spoken > *)')
    ? Number.parseFloat(drawing.style.fontSize)
    : drawing.viewBox.baseVal.width / 10) * (drawing.getScreenCTM()?.a ?? 1);

interface Fitted {
  readonly text: number;
  readonly isWhole: boolean;
}
function tryOut(figure: HTMLElement, { beside, spare }: Layout): Fitted {
  figure.dataset.beside = beside > 0 ? 'yes' : 'no';
  figure.dataset.spared = spared.slice(1, spare + 1).join(' ');
  const column = beside * least();
  figure.style.setProperty('--column', `${column}px`);
  const parts = partsOf(figure);
  if (column > innerWidth * 0.62) return { text: 0, isWhole: false };
  place(parts, innerWidth - column - 2 * pad, innerHeight - 2 * pad - (beside > 0 ? 0 : figure.offsetHeight));
  // Of several drawings one with a single word or none may be small: the others have the words.
  const told = parts.drawings.filter(
    (drawing) => parts.sheets.length < 2 || drawing.querySelectorAll('text:not(.spoken > *)').length > 1,
  );
  const smallest = Math.min(...told.map(heightOfText));
  const { outcomes } = parts;
  const overflows = (box: HTMLElement) =>
    box.scrollHeight > box.clientHeight + 1 || box.scrollWidth > box.clientWidth + 1;
  const isWhole =
    (beside > 0 ? !overflows(figure) : figure.offsetHeight < innerHeight * 0.6) &&
    !(
      outcomes &&
      (overflows(outcomes) || [...outcomes.querySelectorAll<HTMLElement>('.outcome')].some(overflows))
    );
  return { text: smallest, isWhole };
}

/** How far text may outgrow the place that a drawing has for it, before something else is left out instead. */
const stretch = 1.06;

/** No wall: a screen that is magnified so far, or so small, that the figure and its words are read one after the other. */
const inColumn: Layout = { beside: -1, spare: 0 };
const isSmall = () => innerWidth < 600 || innerHeight < 400;

/** Fits a figure to the screen. @param before the layout before, kept while it fits: a slider must not move the drawing */
export function fitToWall(figure: HTMLElement, before?: Layout): Layout {
  if (isSmall()) {
    unfit(figure);
    figure.dataset.beside = 'column';
    return inColumn;
  }
  const last = before === inColumn ? undefined : before;
  const good = ({ text, isWhole }: Fitted) => isWhole && text * stretch >= least();
  let best = last;
  if (!last || !good(tryOut(figure, last))) {
    let most = -1;
    for (const layout of layouts) {
      // What is left out now costs more than a somewhat larger drawing.
      if (best && layout.spare > best.spare && most * stretch >= least()) break;
      const found = tryOut(figure, layout);
      if (found.isWhole && Math.min(found.text, 2 * least()) > most + 0.5) {
        most = Math.min(found.text, 2 * least());
        best = layout;
      }
    }
    best ??= layouts.at(-2)!;
    tryOut(figure, best);
  }
  for (const drawing of partsOf(figure).drawings)
    style(drawing, { '--wall-text': String(Math.max(1, least() / heightOfText(drawing))) });
  return best!;
}

/** Takes every place back. */
export function unfit(figure: HTMLElement): void {
  for (const element of styled) for (const name of names) element.style.removeProperty(name);
  styled.clear();
  figure.querySelector('.outcomes')?.removeAttribute('data-rows');
  delete figure.dataset.beside;
  delete figure.dataset.spared;
  figure.style.removeProperty('--column');
}
