/**
 * How the fingers of a finger joint (box joint, comb joint) share out the height of a corner.
 *
 *   H = n f + s           height = whole fingers + what is left
 *   n odd                 both edges of one wall are fingers, both edges of the other are slots
 *
 * Symbols: H height of the wall (mm), f width of one finger with its share of play (mm), n number of fingers of both
 * walls together (1), s what is left at the far edge (mm).
 * f is half the pitch: one slot and one finger are 2 f, the slot wider by half the play and the finger narrower by as
 * much, so that the layout does not drift however loose the fit is.
 * Held fixed: every finger and slot counts f; the count starts at one edge and runs to the other.
 */
import { relation } from '../core/relation.ts';

const H = { name: 'height of the wall', unit: 'mm', range: [10, 600] } as const;
const f = { name: 'finger width', unit: 'mm', range: [1, 60] } as const;
const n = { name: 'number of fingers', unit: '1', range: [1, 200], whole: true } as const;

/** Share of a finger below which a remainder is arithmetic noise: 9 × 1/4 in must count as 9. */
const noise = 1e-9;
const wholeFingers = (height: number, width: number) => Math.floor(height / width + noise);

/** How many fingers go into a height; a whole number only where nothing is left over. */
export const fingerCount = relation({
  id: 'finger-count',
  title: 'Fingers that go into the height',
  result: { symbol: 'n', name: 'fingers in the height', unit: '1' },
  inputs: { H, f },
  expression: 'H / f',
  compute: ({ H, f }) => H / f,
  evidence: 'geometry',
  source: 'The fingers of both walls together fill the height.',
});

/** Width of the fingers when so many fill the height exactly. */
export const fingerWidthFromCount = relation({
  id: 'finger-width-from-count',
  title: 'Finger width that fills the height',
  result: { symbol: 'f', name: 'finger width', unit: 'mm' },
  inputs: { H, n },
  expression: 'H / n',
  compute: ({ H, n }) => H / n,
  evidence: 'geometry',
  source: 'The height shared out equally.',
});

/** Height that so many fingers fill exactly. */
export const heightFromFingers = relation({
  id: 'height-from-fingers',
  title: 'Height that comes out whole',
  result: { symbol: 'H', name: 'height', unit: 'mm' },
  inputs: { n, f },
  expression: 'n f',
  compute: ({ n, f }) => n * f,
  evidence: 'geometry',
  source: 'Fingers of one width, side by side.',
});

/** The odd whole number nearest to the fingers that go into a height; at least 3, and the larger of two that are equally near. */
export const nearestOddCount = relation({
  id: 'nearest-odd-count',
  title: 'Nearest odd number of fingers',
  result: { symbol: 'n_odd', tex: 'n_{\\mathrm{odd}}', name: 'nearest odd number', unit: '1' },
  inputs: { H, f },
  expression: 'max(3, 2 floor(H / (2 f)) + 1)',
  compute: ({ H, f }) => Math.max(3, 2 * Math.floor(H / (2 * f) + noise) + 1),
  evidence: 'geometry',
  source: 'Every odd number has an even one on each side; whatever lies between those two is nearest to it.',
  limits: 'Three is the smallest joint: a finger between two slots.',
});

/** Width left at the far edge after the last whole finger, mm; 0 where the count is whole. */
export const sliver = relation({
  id: 'sliver',
  title: 'What is left at the far edge',
  result: { symbol: 's', name: 'left at the far edge', unit: 'mm' },
  inputs: { H, f },
  expression: 'H - f floor(H / f)',
  compute: ({ H, f }) => Math.max(0, H - f * wholeFingers(H, f)),
  evidence: 'geometry',
  source: 'The height less all the whole fingers in it.',
});

/** Hole that stays in each side above a lowered front, mm, where the front's edge cuts off one of the front's own fingers: the side's socket for it is a whole finger high. */
export const frontHole = relation({
  id: 'front-hole',
  title: 'Hole above the lowered front',
  result: { symbol: 'o', name: 'height of the hole', unit: 'mm' },
  inputs: {
    h: { ...H, name: 'height of the front', range: [5, 600] },
    H: { ...H, name: 'height of the sides' },
    f,
  },
  rangesGiven: ({ h }) => ({ H: [h, 600] }),
  expression: '(floor(h / f) - 2 floor(h / (2 f))) * min(f * ceil(h / f) - h, H - h)',
  compute: ({ h, H, f }) => {
    const whole = wholeFingers(h, f);
    const rest = h - whole * f;
    return whole % 2 === 1 && rest > noise * f ? Math.min(f - rest, H - h) : 0;
  },
  evidence: 'geometry',
  source:
    'The sides begin with a finger at the lower edge, so the front has every second one from there; where its edge lies in one of them, the rest of that socket stays open.',
});

/** One finger of the corner: where it starts and ends, mm from the marked edge, and which wall it belongs to. */
export interface Finger {
  readonly from: number;
  readonly to: number;
  /** The wall that begins with a finger is `first`. */
  readonly wall: 'first' | 'second';
  /** False for the part-finger at the far edge. */
  readonly whole: boolean;
}

/** All fingers of a corner from the marked edge up, the two walls in turn. Empty for sizes that are not positive. */
export function fingerLayout(height: number, width: number): Finger[] {
  if (!(height > 0 && width > 0)) return [];
  const whole = wholeFingers(height, width);
  const count = whole + (height - whole * width > noise * width ? 1 : 0);
  return Array.from({ length: count }, (_, index) => ({
    from: index * width,
    to: Math.min((index + 1) * width, height),
    wall: index % 2 === 0 ? 'first' : 'second',
    whole: index < whole,
  }));
}

/** Fingers of a corner, a part-finger counted as one. */
export const pieces = (height: number, width: number): number => Math.ceil(height / width - noise);

/**
 * The nearest heights with a whole number of fingers, below (trim the wall) and above (cut it higher), mm.
 * Both are the height itself where it comes out whole already. With `odd`, odd numbers only; `below` is then
 * 0 where no odd number of fingers goes in.
 */
export function wholeHeights(height: number, width: number, odd = false): { below: number; above: number } {
  const step = odd ? 2 : 1;
  const start = odd ? 1 : 0;
  const count = height / width;
  const below = start + step * Math.floor((count - start) / step + noise);
  const above = start + step * Math.ceil((count - start) / step - noise);
  return { below: Math.max(0, below) * width, above: above * width };
}
