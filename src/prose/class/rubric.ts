/** The rubric as rows of a table. Pure. */

interface Item {
  readonly item: string;
  readonly how: string;
  readonly levels: readonly string[];
}

/** Points of the levels, best first. */
export const points = [4, 3, 2, 1] as const;

/** One row a thing to measure, with empty columns for what was measured and the points given. */
export const rubricRows = (items: readonly Item[]) =>
  items.map(({ item, how, levels }) => ({
    item,
    'how it is measured': how,
    ...Object.fromEntries(points.map((number, at) => [`${number} points`, levels[at]!])),
    measured: '',
    'points given': '',
  }));
