/** The names of all parts, each with its size and its warnings: round the drawing, or as a list. */
import type { Values } from '../../box/whole/index.ts';
import type { LabelPlace } from '../../figures/box/label-places.ts';
import { partsOfBox } from '../../figures/box/parts-of-box.ts';
import type { Count } from '../verdicts/Mark.tsx';
import { CountMark } from '../verdicts/Mark.tsx';
import { PartSize } from './PartSize.tsx';
import { nameOfPart, type PartOfBench, partsOfBench } from './parts.ts';

interface Props {
  /** Of those that stand round the drawing. */
  places: readonly LabelPlace[];
  /** Room for them at each side, px. */
  beside: number;
  chosen: PartOfBench;
  values: Values;
  counts: (part: PartOfBench) => Count;
  onPart: (part: PartOfBench) => void;
}

export function PartNames({ places, beside, ...rest }: Props) {
  return (
    <nav class="part-names" aria-label="Parts of the box" style={{ '--beside': `${beside}px` }}>
      <ul>
        {partsOfBox.map((part) => (
          <Name key={part} part={part} place={places.find((place) => place.part === part)} {...rest} />
        ))}
      </ul>
      <ul class="low">
        {partsOfBench
          .filter((part) => !(partsOfBox as readonly PartOfBench[]).includes(part))
          .map((part) => (
            <Name key={part} part={part} {...rest} />
          ))}
      </ul>
    </nav>
  );
}

interface NameProps extends Omit<Props, 'places' | 'beside'> {
  part: PartOfBench;
  place?: LabelPlace | undefined;
}

function Name({ part, place, chosen, values, counts, onPart }: NameProps) {
  return (
    <li
      class={`${place?.side ?? ''} ${part === chosen ? 'chosen' : ''}`}
      style={place && { '--top': `${Math.round(place.top)}px` }}
    >
      <a
        href={`#${part}`}
        aria-current={part === chosen ? 'true' : undefined}
        onClick={(event) => {
          event.preventDefault();
          onPart(part);
        }}
      >
        {nameOfPart[part]}
      </a>
      <span class="size">
        <PartSize part={part} values={values} />
      </span>
      <CountMark count={counts(part)} />
    </li>
  );
}
