/** Woods as answers: what my own lid or bottom would need in each. */

import type { Box } from '../../box/subjects/inputs.ts';
import { evaluate } from '../../box/whole/index.ts';
import { woods } from '../../box/wood/woods.ts';
import { type Amount, say } from '../../box/work/say.ts';
import type { Wood } from '../../calc/core/wood.ts';
import type { Entry } from './entry.ts';

/** Concepts that every wood answers, without naming them. */
export const answeredByWoods: readonly string[] = [
  ...['gap', 'movement', 'swells', 'shrinks', 'wood', 'season', 'lid', 'bottom', 'panel'].map(
    (name) => `=${name}`,
  ),
];

const fine = (value: number, round?: 'up'): Amount => ({
  value,
  kind: 'length',
  as: 'fine',
  ...(round && { round }),
});

const path = 'woods/';
const still =
  'The tables have no movement of this wood, so no gap can be worked out for it here. Other figures stand in the table of woods.';

const idOf = (name: string) => `wood:${name.replaceAll(' ', '-')}`;

/** @param of the panel that is meant; both are solid then, whatever they are in the box */
function woodEntry(wood: Wood, box: Box, of: 'lid' | 'bottom'): Entry {
  const inIt = () =>
    evaluate({ ...box, species: wood.id, lid: 'solid', bottom: 'solid', bottomFit: 'floating' });
  return {
    id: `wood:${wood.id}`,
    kind: 'wood',
    title: wood.name,
    path,
    rule: of === 'lid' ? 'lid-clearance' : 'gap-beside-the-bottom',
    part: { of },
    number: () => {
      const { lidPlayNeeded, bottomGapNeeded } = inIt();
      const needed = of === 'lid' ? lidPlayNeeded : bottomGapNeeded;
      return Number.isNaN(needed) ? undefined : [fine(needed, 'up')];
    },
    get says() {
      const { lidPlayNeeded, bottomGapNeeded, hundredMoves } = inIt();
      const first =
        of === 'lid'
          ? say`Play to leave beside my lid today in this wood, both sides together; beside a solid bottom ${fine(bottomGapNeeded, 'up')} at each side.`
          : say`Gap to leave today at each side of my bottom in this wood; beside my lid ${fine(lidPlayNeeded, 'up')} in all.`;
      return say`${first} Flat-sawn, 100 mm (4 in) of it move ${fine(hundredMoves)} over 4 points of moisture.`;
    },
  };
}

/** @param stillWoods names of woods without a figure for movement */
export const woodEntries = (box: Box, stillWoods: readonly string[]): readonly Entry[] => [
  ...woods.map((wood) => woodEntry(wood, box, box.kind === 'sliding' ? 'lid' : 'bottom')),
  ...stillWoods.map((name): Entry => ({ id: idOf(name), kind: 'wood', title: name, path, says: still })),
];

/** The same wood for the panel that was asked about. */
export function forPanel(entry: Entry, box: Box, concepts: ReadonlySet<string>): Entry {
  const of = concepts.has('=bottom') ? 'bottom' : concepts.has('=lid') ? 'lid' : undefined;
  const wood = woods.find(({ id }) => entry.id === `wood:${id}`);
  return of && wood ? woodEntry(wood, box, of) : entry;
}
