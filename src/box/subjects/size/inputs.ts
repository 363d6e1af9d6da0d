/** What goes in the box, and which size is wanted. Lengths in mm. */

import { INCH } from '../../../units/index.ts';
import type { Input, ItemsField } from '../../core/field.ts';
import { choice, count, length, size } from '../../core/inputs.ts';

const byContents = [{ sizeFrom: ['contents'] }];
const byWanted = [{ sizeFrom: ['inside', 'outside'] }];

const items: Input<ItemsField> = {
  type: 'items',
  label: 'list of contents',
  most: 20,
  start: [{ name: 'domino', length: 50, width: 25, height: 9, count: 28 }],
  inchStart: [{ name: 'domino', length: 2 * INCH, width: INCH, height: (3 / 8) * INCH, count: 28 }],
};

export const contentsInputs = {
  /** What goes in; `calc/size/packing` finds how it may lie. */
  items,
  /** The contents as they lie together: one block, as the reader arranged them. */
  contentsLength: length('length of the contents', {
    low: 1,
    high: 600,
    start: { mm: 150, inch: 6 },
    when: byContents,
    leads: byContents,
    help: 'All the contents as they lie together.',
  }),
  contentsWidth: length('width of the contents', {
    low: 1,
    high: 400,
    start: { mm: 90, inch: 3 + 3 / 4 },
    when: byContents,
    leads: byContents,
  }),
  contentsHeight: length('height of the contents', {
    low: 0.5,
    high: 300,
    start: { mm: 25, inch: 1 },
    when: byContents,
    leads: byContents,
  }),
  /** Room on each side of the contents. It shows always: it also limits what fits a given inside. */
  clearance: size('room on each side', {
    low: 0,
    high: 25,
    start: { mm: 3, inch: 1 / 8 },
    leads: byContents,
    help: 'Common practice: 3 to 6 mm, 1/8 to 1/4 in.',
  }),
  /** Room above the contents. */
  headroom: size('room above the contents', {
    low: 0,
    high: 60,
    start: { mm: 10, inch: 5 / 16 },
    leads: byContents,
  }),
  /** Further length for fingers to reach down beside the contents. */
  fingerRoom: size('room for fingers, in the length', {
    low: 0,
    high: 60,
    start: { mm: 0, inch: 1 / 8 },
    leads: byContents,
    help: 'Common practice: 20 to 25 mm, 3/4 to 1 in.',
  }),
  /** Lining on every inside face. */
  lining: size('lining', {
    low: 0,
    high: 5,
    start: 0,
    help: 'Felt is about 1 to 2 mm, 1/16 in: common practice.',
  }),
  /** Dividers that stand across the length, and across the width. */
  dividersAcross: count('dividers across the length', { low: 0, high: 12, start: 0 }),
  dividersAlong: count('dividers along the length', { low: 0, high: 12, start: 0 }),
  dividerThickness: size('divider thickness', {
    low: 1,
    high: 12,
    start: { mm: 4, inch: 5 / 32 },
    when: [{ dividersAcross: 'some' }, { dividersAlong: 'some' }],
  }),
};

export const sizeInputs = {
  /** How it opens: a lid that slides in grooves, one that lifts off, one sawn off the closed box and hinged. */
  kind: choice(
    'kind of box',
    {
      sliding: 'sliding lid in grooves',
      'lift-off': 'lift-off lid with a liner',
      sawn: 'lid sawn off the closed box, hinged',
    },
    'sliding',
  ),
  /** Which size is given; the others follow. */
  sizeFrom: choice(
    'the size comes from',
    { contents: 'the contents', inside: 'a wanted inside', outside: 'a wanted outside' },
    'contents',
  ),
  /** The wanted size, inside or outside; not used while the contents lead. */
  wantedLength: size('wanted length', {
    low: 40,
    high: 600,
    start: { mm: 172, inch: 7 },
    when: byWanted,
    leads: byWanted,
  }),
  wantedWidth: size('wanted width', {
    low: 30,
    high: 400,
    start: { mm: 112, inch: 4 + 5 / 8 },
    when: byWanted,
    leads: byWanted,
  }),
  wantedHeight: size('wanted height', {
    low: 15,
    high: 300,
    start: { mm: 56, inch: 2 + 3 / 16 },
    when: byWanted,
    leads: byWanted,
  }),
};
