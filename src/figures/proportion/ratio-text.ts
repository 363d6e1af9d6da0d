/** Ratios as words in drawings and sentences. */
import { isRefused } from '../../calc/core/refusal.ts';
import { nearestWholeRatio } from '../../calc/proportion/whole-ratio.ts';
import { format } from '../../units/index.ts';

/** "1.71", two decimals at most; a dash where there is no number. */
export const ratioText = (value: number) => format(value, 'ratio', { system: 'mm', digits: 2 });

/** "inside 1.71", or "no inside" where the walls meet. */
export const insideText = (value: number) =>
  Number.isFinite(value) ? `inside ${ratioText(value)}` : 'no inside';

/**
 * What to say after a ratio: ", which is 8:5" or ", about 12:7", in whole numbers with at most eight for the width.
 * Nothing for ratios beyond 4, where whole numbers say no more than the ratio does.
 */
export function wholeRatioText(value: number): string {
  const found = nearestWholeRatio(Math.max(value, 1 / value), 8);
  if (isRefused(found) || found.p > 4 * found.q) return '';
  const parts = value < 1 ? `${found.q}:${found.p}` : `${found.p}:${found.q}`;
  return Math.abs(found.difference) < 0.05 ? `, which is ${parts}` : `, about ${parts}`;
}
