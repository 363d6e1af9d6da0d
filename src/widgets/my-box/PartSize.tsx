/** What a part of the bench comes to, in a few words: "7 fingers of 8 mm". */

import { fields } from '../../box/subjects/inputs.ts';
import type { Values } from '../../box/whole/index.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { Sizes } from '../../figures/parts/Sizes.tsx';
import type { PartOfBench } from './parts.ts';

const opens = { sliding: 'slides', 'lift-off': 'lifts off', sawn: 'hinged' } as const;
const joints = {
  finger: 'fingers',
  dovetail: 'dovetails',
  mitre: 'plain miters',
  'keyed-mitre': 'miters with keys',
  'splined-mitre': 'miters with a spline',
  rabbet: 'rabbets',
  butt: 'butted',
} as const;

const Length = ({ value }: { value: number }) => <Quantity value={value} kind="length" />;

export function PartSize({ part, values: v }: { part: PartOfBench; values: Values }) {
  switch (part) {
    case 'inside':
      return <Sizes of={[v.clearLength, v.clearWidth, v.insideHeight]} />;
    case 'walls':
      return (
        <>
          <Length value={v.wall} /> thick
        </>
      );
    case 'corners':
      return v.joint === 'finger' ? (
        <>
          <Quantity value={v.fingerCount} kind="number" digits={1} /> fingers of{' '}
          <Length value={v.fingerWidth} />
        </>
      ) : (
        joints[v.joint]
      );
    case 'grooves':
      return v.bottomSeat === 'groove' ? (
        <>
          lips <Length value={v.lidLip} /> and <Length value={v.bottomLip} />
        </>
      ) : (
        <>
          lip <Length value={v.lidLip} />
        </>
      );
    case 'bottom':
      return (
        <>
          <Length value={v.bottomThickness} /> {v.bottom}
        </>
      );
    case 'lid':
      return (
        <>
          {opens[v.kind]}, <Length value={v.lidThickness} />
        </>
      );
    case 'air':
      return (
        <>
          {fields.species.options[v.species]}, <Quantity value={v.humidityToday} kind="percent" digits={0} />
        </>
      );
    case 'board':
      return <Sizes of={[v.boardLength, v.boardWidth, v.boardThickness]} />;
    case 'accuracy':
      return (
        <>
          ± <Quantity value={v.lengthError} kind="length" as="exact" />
        </>
      );
  }
}
