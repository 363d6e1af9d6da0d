/** Reads a PDF that the browser printed: its pages, their words, the colors used, and lengths on the paper. */
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

type Matrix = readonly [number, number, number, number, number, number];
/** Ends of what a path covers, in points from the page's lower left corner. */
interface Extent {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

export interface PrintedPage {
  /** Size of the paper, mm. */
  readonly width: number;
  readonly height: number;
  readonly text: string;
  /** Share of the paper's height down to the lowest words above the page number, 0 to 1. */
  readonly filled: number;
  /** What is left free beside the words, from each edge of the paper, mm. */
  readonly free: Readonly<Record<'left' | 'right' | 'top' | 'bottom', number>>;
  /** Colors of lines and areas, as "#rrggbb". */
  readonly colors: readonly string[];
  /** Length of the filled bar that stands at the left of these words, mm. */
  readonly bar: (words: string) => number;
}

const mm = (points: number) => (points * 25.4) / 72;

/** The drawing operations of a page: everything painted, where it lies on the paper. */
function painted(list: { fnArray: number[]; argsArray: unknown[][] }) {
  const paths: Extent[] = [];
  const colors = new Set<string>();
  const stack: Matrix[] = [];
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  list.fnArray.forEach((operation, index) => {
    const given = list.argsArray[index]!;
    if (operation === OPS.save) stack.push(now);
    else if (operation === OPS.restore) now = stack.pop() ?? now;
    else if (operation === OPS.transform) now = times(now, given as unknown as Matrix);
    else if (operation === OPS.setFillRGBColor || operation === OPS.setStrokeRGBColor)
      colors.add(String(given[0]));
    else if (operation === OPS.constructPath && given[0] === OPS.fill) {
      const [x1, y1, x2, y2] = Object.values(given[2] as Record<string, number>) as [
        number,
        number,
        number,
        number,
      ];
      const corners = [at(now, x1, y1), at(now, x2, y2)];
      paths.push({
        left: Math.min(...corners.map(([x]) => x)),
        right: Math.max(...corners.map(([x]) => x)),
        low: Math.min(...corners.map(([, y]) => y)),
        high: Math.max(...corners.map(([, y]) => y)),
      });
    }
  });
  return { paths, colors: [...colors] };
}

/** What `inner` does, then what `outer` does. */
function times([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}
const at = ([a, b, c, d, e, f]: Matrix, x: number, y: number) =>
  [a * x + c * y + e, b * x + d * y + f] as const;

/** Heights of words, those in the lower margin left out: the page number stands there. */
const above = (items: readonly { transform: number[] }[], low: number) =>
  items.map(({ transform }) => transform[5]!).filter((height) => height - low > (14 / 25.4) * 72);

interface Word {
  readonly transform: number[];
  readonly width: number;
  readonly height: number;
}

/** Least distances of words from the edges of the paper, mm. */
function freeBeside(words: readonly Word[], [left, low, right, high]: readonly number[]) {
  const least = (of: (word: Word) => number) => mm(Math.min(...words.map(of)));
  return {
    left: least(({ transform }) => transform[4]! - left!),
    right: least(({ transform, width }) => right! - transform[4]! - width),
    top: least(({ transform, height }) => high! - transform[5]! - height),
    bottom: least(({ transform }) => transform[5]! - low!),
  };
}

/** The pages of a PDF. */
export async function readPdf(file: Uint8Array): Promise<PrintedPage[]> {
  const { numPages, getPage } = await getDocument({ data: new Uint8Array(file), verbosity: 0 }).promise.then(
    (found) => ({ numPages: found.numPages, getPage: (number: number) => found.getPage(number) }),
  );
  const pages: PrintedPage[] = [];
  for (let number = 1; number <= numPages; number++) {
    const page = await getPage(number);
    const [left, low, right, high] = page.view as [number, number, number, number];
    const items = (await page.getTextContent()).items.flatMap((item) => ('str' in item ? [item] : []));
    const { paths, colors } = painted(await page.getOperatorList());
    pages.push({
      width: mm(right - left),
      height: mm(high - low),
      text: items.map(({ str }) => str).join(' '),
      free: freeBeside(
        items.filter(({ str }) => str.trim()),
        page.view,
      ),
      colors,
      filled:
        1 -
        (Math.min(
          high,
          ...above(
            items.filter(({ str }) => str.trim()),
            low,
          ),
        ) -
          low) /
          (high - low),
      bar: (words) => {
        const label = items.find(({ str }) => str === words);
        if (!label) throw new Error(`no words “${words}” on the page`);
        const [, , , , x, y] = label.transform as number[] as unknown as Matrix;
        const beside = paths.filter(
          ({ right: end, low: foot, high: top }) =>
            end < x && x - end < 30 && Math.abs((foot + top) / 2 - y) < 12,
        );
        if (beside.length !== 1) throw new Error(`${beside.length} bars beside “${words}”`);
        return mm(beside[0]!.right - beside[0]!.left);
      },
    });
  }
  return pages;
}
