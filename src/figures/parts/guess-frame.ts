/** Where in a drawing a mark is dragged: the drawing's size in its user units, and the ends of the mark's way in it. */
export interface GuessFrame {
  readonly width: number;
  readonly height: number;
  /** Places of the lowest and the highest value. Level, or upright. */
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

/** True if the mark is dragged up or down. */
export const isUpright = ({ from, to }: GuessFrame): boolean => from[0] === to[0];

/** Place of a value in a frame, in user units, for a mark that goes from `low` to `high`. */
export function placeIn(
  { from, to }: GuessFrame,
  { low, high }: { low: number; high: number },
  value: number,
): readonly [x: number, y: number] {
  const share = (value - low) / (high - low);
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}
