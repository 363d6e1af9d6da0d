/** Which wood: a few as tiles, every other in a list. */
import { type Box, fields } from '../../../box/subjects/inputs.ts';
import { usualWoods } from './choices.ts';
import { Tiles } from './Tiles.tsx';

const woods = fields.species.options as Readonly<Record<string, string>>;

interface Props {
  species: Box['species'];
  choose: (species: Box['species']) => void;
}

export const WoodQuestion = ({ species, choose }: Props) => (
  <Tiles
    number={3}
    question="Which wood?"
    tiles={usualWoods.map((value) => ({ value, label: woods[value] }))}
    chosen={species}
    choose={choose}
  >
    <label class="another-wood">
      another wood{' '}
      <select value={species} onChange={({ currentTarget }) => choose(currentTarget.value as Box['species'])}>
        {Object.entries(woods).map(([id, name]) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  </Tiles>
);
