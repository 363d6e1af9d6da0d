/** Doors of the site as answers. */
import type { Entry } from './entry.ts';

const page = (path: string, title: string, says: string, ...asked: string[]): Entry => ({
  id: `page:${path.replace(/\/$/, '')}`,
  kind: 'page',
  title,
  path,
  says,
  asked,
});

export const pages: readonly Entry[] = [
  page(
    'build-sheet/',
    'Build sheet of my box',
    'Cut list, set-ups, gaps and order of work, for paper.',
    'cut list',
    'print build sheet',
    'plans of my box',
    'order of work',
  ),
  page(
    'templates/',
    'Paper templates, full size',
    'Joints and grooves of your box, for A4 and US Letter.',
    'print joint template',
    'full size drawing',
  ),
  page(
    'my-box/',
    'My box',
    'Every size and choice of your box, and what each rule says.',
    'design a box',
    'new box',
    'change the box',
  ),
  page(
    'woods/',
    'Table of woods',
    'How much each wood moves, how dense, hard and stiff it is.',
    'list of woods',
    'compare woods',
    'which wood',
  ),
  page(
    'lessons/',
    'Lessons',
    'The course, from the first size to the years after.',
    'course',
    'class',
    'learn',
    'all lessons',
  ),
  page(
    'rules/',
    'Rules',
    'Every rule of thumb, with range, reason and limits.',
    'rules of thumb',
    'all rules',
  ),
  page(
    'sources/',
    'Sources',
    'Every work the numbers come from, and how it was read.',
    'references',
    'literature',
    'books',
    'where are the numbers from',
  ),
  page(
    'a-z/',
    'From A to Z',
    'All rules, lessons, words and woods in one list.',
    'index',
    'glossary',
    'alphabetical list',
    'all words',
  ),
];
