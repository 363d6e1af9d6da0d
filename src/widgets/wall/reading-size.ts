/** Least height of type on a wall. */

/** What can be read eight meters from a picture of 768 lines, px. */
const least = 28;

/**
 * Least size of type for a screen so large, px: the same share of the picture's height, and never less.
 * @param width of the screen, px
 * @param height px
 */
export const readingSize = (width: number, height: number): number =>
  Math.max(least, Math.round(least * Math.min(width / 1024, height / 768)));
