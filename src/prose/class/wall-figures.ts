/** The figures that a course shows on the wall, each with where it stands. A name that no lesson has stops the build. */
import { oneOf } from '../author-error.ts';
import { lessons } from '../lessons.ts';

/** A figure of a lesson, or the small one of a rule. */
type Place = readonly [lesson: string, figure: string] | { readonly rule: string };

export interface WallFigure {
  readonly shows: string;
  readonly places: readonly { readonly words: string; readonly at: Place }[];
  /** What a teacher might expect and does not find. */
  readonly without?: string;
}

export const wallFigures: readonly WallFigure[] = [
  {
    shows: 'Growth rings, and boards cut from the log',
    places: [{ words: 'push the board', at: ['reading-the-board', 'log'] }],
  },
  {
    shows: 'From the air to the wood, and to the gap of a lid',
    places: [
      { words: 'air to moisture', at: ['air-and-wood', 'curve'] },
      { words: 'through the year to the gap', at: ['wood-movement', 'lid'] },
    ],
    without: 'Two figures, one after the other; none has both.',
  },
  {
    shows: 'Eight cuts of a miter add up',
    places: [{ words: 'two states', at: { rule: 'eight-cuts-of-a-miter' } }],
    without: 'It has no slider for the angle.',
  },
  {
    shows: 'Fingers, and what is left at the edge',
    places: [{ words: 'height and fingers', at: ['joint-spacing', 'finger-layout'] }],
  },
  {
    shows: 'Where the hole of a groove shows',
    places: [{ words: 'groove and fingers', at: ['where-the-groove-shows', 'corner'] }],
  },
  {
    shows: 'Diagonals of a box pushed aside',
    places: [{ words: 'read both', at: ['is-it-square', 'diagonals'] }],
  },
  {
    shows: 'Parts and saw cuts on one board',
    places: [{ words: 'the row of walls', at: ['grain-round-the-corner', 'row-on-board'] }],
  },
  {
    shows: 'A bottom that floats, dry and damp',
    places: [{ words: 'both grooves', at: ['wood-movement', 'section'] }],
  },
  {
    shows: 'Cup from two unequal faces',
    places: [{ words: 'dry one face', at: ['reading-the-board', 'faces-cup'] }],
  },
  {
    shows: 'How long a finish keeps damp out',
    places: [{ words: 'finish against days', at: ['what-a-finish-does', 'race'] }],
  },
  {
    shows: 'A hinge let in too deep, or not deep enough',
    places: [{ words: 'depth', at: ['lift-off-and-hinged-lids', 'depth'] }],
  },
  { shows: 'Ten years of one lid', places: [{ words: 'jam and rattle', at: ['ten-years', 'ten-years'] }] },
];

/** The address of a figure on the wall, from the site's root. */
export function wallPath(at: Place): string {
  if ('rule' in at) return `rules/${at.rule}/#wall=figure`;
  const [lesson, figure] = at;
  const { labs, guesses = {} } = oneOf(lessons, lesson, 'figures for the wall', lesson);
  oneOf({ ...labs, ...guesses }, figure, 'figures for the wall', figure);
  return `lessons/${lesson}/#wall=${figure}`;
}
