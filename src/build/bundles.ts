/**
 * How the browser's code is put into files, by folder: what any two pages share stands in the file of its folder, and
 * what one page alone needs stays with that page. A group takes along what its files import, so what many import
 * comes first.
 */
import { subjectNames } from '../box/subjects/names.ts';

/** Subjects whose code shares a file: light ones, so that the pages of the whole box ask for fewer files. */
const together: readonly (readonly string[])[] = [
  ['size', 'proportion'],
  ['walls', 'bottom', 'grooves'],
  ['joints', 'square'],
  ['lid', 'finish'],
];
const shelfOf = (name: string) => together.find((set) => set.includes(name)) ?? [name];
/** A shelf stands where its last subject does: it would take along what an earlier one of its own imports. */
const shelves = subjectNames.map(shelfOf).filter((shelf, at) => shelf.at(-1) === subjectNames[at]);

const sources = (...paths: string[]) =>
  new RegExp(`[\\\\/]src[\\\\/](${paths.join('|').replaceAll('/', '[\\\\/]')})[\\\\/]`);
/** What stands right in these folders is for every page; what stands in a folder of theirs is for some, or is fetched late. */
const everyPage = (...paths: string[]) => new RegExp(`${sources(...paths).source}[^\\\\/]+$`);
const minShareCount = 2;
export const bundles = [
  {
    name: 'kit',
    test: new RegExp(
      `[\\\\/]preact[\\\\/]|${everyPage('units', 'notebook', 'widgets/(kit|beside)').source}|${sources('calc/core', 'box/(core|wood)', 'figures/parts', 'widgets/verdicts').source}`,
    ),
    // What a page fetches late stays late.
    tags: ['$initial' as const],
    minShareCount,
  },
  {
    name: 'why',
    test: sources('units/late', 'widgets/kit/late'),
    minShareCount,
  },
  { name: 'lesson', test: sources('widgets/lesson'), tags: ['$initial' as const], minShareCount },
  // What every exercise is made of, and the numbers drawn, for the page of one and for the sheets of all.
  {
    name: 'exercise',
    test: new RegExp(`[\\\\/]pure-rand[\\\\/]|${sources('exercises/core').source}`),
    tags: ['$initial' as const],
    minShareCount,
  },
  // The front page shows one guess, without the calculation behind it.
  { name: 'august', test: sources('(figures|widgets/subjects)/movement/august'), minShareCount },
  { name: 'plot', test: new RegExp(`[\\\\/]d3-|${sources('figures/plot').source}`), minShareCount },
  ...shelves.flatMap((names) => [
    // The board is judged on pages that do not draw its figure, which needs contours.
    ...(names[0] === 'board'
      ? [{ name: 'board-judged', test: sources('(calc|box/subjects)/board'), minShareCount }]
      : []),
    {
      name: names.join('-'),
      test: sources(
        `(calc|box/subjects|figures|widgets/subjects)/(?!air/(?:year|climates|year-from-readings)[.])(${names.join('|')})`,
      ),
      minShareCount,
    },
  ]),
  // A year of air belongs to one lesson, and to late parts.
  { name: 'year', test: /[\\/]src[\\/](notebook|calc[\\/]air)[\\/](year|climates)/, minShareCount },
  // All subjects together, and the marks of what they say: the page of all rules judges by them without what builds and
  // draws the box.
  {
    name: 'whole',
    test: sources('box/whole'),
    tags: ['$initial' as const],
    minShareCount,
  },
  // What the bench of my box draws with from the start; it is shared with the build sheet and the templates.
  {
    name: 'box',
    test: new RegExp(
      `${sources('geometry', 'box/design', 'figures/box', 'notebook/reckoner').source}|[\\\\/]my-box[\\\\/](warnings|DirectNumber)`,
    ),
    tags: ['$initial' as const],
    minShareCount,
  },
  // What the bench fetches late, and the build sheet and the templates at once.
  { name: 'sheet', test: sources('box/(stock|work)', 'figures/(board|template|views)'), minShareCount },
];
