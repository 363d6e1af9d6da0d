/**
 * The subjects of the notebook, in the order in which they build on one another: in `calc` and `box` a subject imports
 * only from those before it. The same names stand as folders in `calc`, `box/subjects`, `figures` and `widgets/subjects`.
 */
export const subjectNames = [
  /** Every size of the box, and what goes in it. */
  'size',
  /** Length to width to height. */
  'proportion',
  /** Humidity, the moisture of wood, and the time it takes. */
  'air',
  /** Change of size with moisture; panels in grooves. */
  'movement',
  /** Log, rings, what comes out of a board. */
  'board',
  /** Thickness of the walls. */
  'walls',
  /** How the bottom sags and sounds. */
  'bottom',
  /** Corner joints. */
  'joints',
  /** Ends out of square, unequal walls, diagonals, twist. */
  'square',
  /** Wood beside grooves and below them. */
  'grooves',
  /** How a lid runs. */
  'lid',
  /** Films that slow moisture. */
  'finish',
  /** What glue brings along. */
  'glue',
] as const;

export type SubjectName = (typeof subjectNames)[number];
