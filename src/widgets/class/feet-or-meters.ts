/** A length as wood is bought, rounded up: meters to a tenth, or whole feet. */
import { INCH } from '../../units/index.ts';

/** Arithmetic noise buys no wood. */
const up = (number: number) => Math.ceil(number - 1e-6);

/** @param length mm */
export const bought = (length: number) => ({
  mm: `${(up(length / 100) / 10).toFixed(1)}\u00a0m`,
  inch: `${up(length / INCH / 12)}\u00a0ft`,
});
