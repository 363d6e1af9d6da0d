/** Labs of the lesson on contents. */
import { modelOf } from '../../../box/subjects/model.ts';
import { proportion } from '../../../box/subjects/proportion/subject.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { Compartments } from '../../../figures/size/Compartments.tsx';
import { StackGuess } from '../../../figures/size/StackGuess.tsx';
import { INCH } from '../../../units/index.ts';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { startGuesses } from './start-from-what-goes-in-it-guesses.tsx';

const Length = ({ of }: { of: number }) => <Quantity value={of} kind="length" digits={1} denominator={32} />;

const labs: Record<string, LabSpec> = {
  compartments: {
    title: 'What stands between the two ends',
    figure: ({ values }) => <Compartments values={values} system="mm" mark={undefined} open />,
    controls: ['dividersAcross', 'lining', 'fingerRoom'],
    more: ['contentsLength', 'clearance', 'dividerThickness'],
    results: ['insideLength', 'outsideLength'],
    says: (v) => {
      const besides = v.insideLength - v.contentsLength;
      return (
        <>
          The things need <Length of={v.contentsLength} />, the inside <Length of={v.insideLength} />:{' '}
          <Length of={besides} /> goes to room, lining and dividers.
        </>
      );
    },
  },
  stack: {
    title: 'The height, term by term',
    figure: ({ values }) => <StackGuess values={values} system="mm" mark={undefined} open />,
    controls: ['headroom', 'lidThickness', 'bottomLip'],
    more: ['contentsHeight', 'bottomTongue', 'lidLip', 'wall'],
    results: ['insideHeight', 'outsideHeight'],
    says: (v) => (
      <>
        Of <Length of={v.outsideHeight} /> outside, <Length of={v.insideHeight} /> are inside.
        {v.headroom < INCH / 32 && ' With so little room above them the things drag on the lid.'}
      </>
    ),
  },
};

export const lesson = { labs, guesses: startGuesses, model: modelOf(proportion) };
export default islandOf(lesson);
