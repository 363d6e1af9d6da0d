/** What can be answered to the three questions of a new box. */
import type { Item } from '../../../box/core/field.ts';
import type { Box } from '../../../box/subjects/inputs.ts';
import { INCH, type UnitSystem } from '../../../units/index.ts';
import type { CatalogItem } from '../Contents.tsx';

/** A stack of cards or photographs, mm: a start, to be changed once the box is on the bench. */
const stack: Readonly<Record<UnitSystem, number>> = { mm: 50, inch: 2 * INCH };

interface Preset {
  readonly label: string;
  /** Its name in the catalog. */
  readonly of: string;
  readonly count: number;
}

const presets: readonly Preset[] = [
  { label: '28 dominoes', of: 'domino', count: 28 },
  { label: '2 packs of cards', of: 'pack of 54 cards, poker size', count: 2 },
  { label: 'a stack of index cards', of: 'index card, 3 by 5 in', count: 1 },
  { label: 'a stack of photographs', of: 'photograph, 4 by 6 in', count: 1 },
  { label: '12 pencils', of: 'pencil', count: 12 },
  { label: '5 dice', of: 'die', count: 5 },
];

export interface Things {
  readonly label: string;
  readonly item: Item;
}

/** Things of the catalog, each with how many. */
export const thingsOf = (catalog: readonly CatalogItem[], system: UnitSystem): readonly Things[] =>
  presets.flatMap(({ label, of, count }) => {
    const found = catalog.find(({ name }) => name === of);
    if (!found) return [];
    const { name, length, width, height } = found;
    return [{ label, item: { name, length, width, height: height ?? stack[system], count } }];
  });

/** The own thing to start from, mm. */
export const ownThing = (system: UnitSystem): Item => ({
  name: 'my own',
  ...(system === 'mm'
    ? { length: 150, width: 100, height: 40 }
    : { length: 6 * INCH, width: 4 * INCH, height: 1.5 * INCH }),
  count: 1,
});

export const kinds: readonly { readonly kind: Box['kind']; readonly label: string }[] = [
  { kind: 'sliding', label: 'slides' },
  { kind: 'lift-off', label: 'lifts off' },
  { kind: 'sawn', label: 'hinged' },
];

/** Shown as tiles; every other wood is in the list beside them. */
export const usualWoods: readonly Box['species'][] = [
  'black-cherry',
  'black-walnut',
  'sugar-maple',
  'commercial-white-oak',
  'yellow-poplar',
];
