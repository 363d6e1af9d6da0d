/** Labs of the lesson on grain round the corner. */
import type { InputsOf } from '../../../box/core/field.ts';
import { length, number } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { isPair } from '../../../box/subjects/board/results.ts';
import { board } from '../../../box/subjects/board/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import type { Values } from '../../../box/whole/index.ts';
import { stepAtCut, stepAtFourth, stepBetweenLeaves } from '../../../calc/board/grain-round.ts';
import { lineRound } from '../../../calc/board/line-round.ts';
import { CornerLines } from '../../../figures/board/CornerLines.tsx';
import { RowOnBoard } from '../../../figures/board/RowOnBoard.tsx';
import { StripFromBoard } from '../../../figures/board/StripFromBoard.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { type LabSpec, lab } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { grainRoundTheCornerGuesses } from './grain-round-the-corner-guesses.tsx';

const place = { from: length('from the edge of the board to the strip', { low: 0, high: 90, start: 46 }) };

const figured = {
  slope: number('slope of the figure to the edge', 'angle', {
    low: 0,
    high: 5,
    step: 0.5,
    digits: 1,
    start: 2,
  }),
  rings: number('angle of the rings to the face', 'angle', {
    low: 15,
    high: 90,
    step: 5,
    start: 80,
    help: '90° is quarter-sawn.',
  }),
};
type Figured = Values & InputsOf<typeof figured>;
const row = rowsOf<Figured>();
const step = { kind: 'length', as: 'fine', rule: 'walk-round-order' } as const;
/** Where the line begins on the front, as a share of the height. Ours. */
const begins = 0.12;

const Fine = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;

const labs: Record<string, LabSpec> = {
  'strip-from-board': lab({
    title: 'Where on the board the walls lie',
    own: place,
    controls: ['from'],
    more: ['boardWidth'],
    figure: ({ values: v }) => <StripFromBoard values={v} from={v.from} />,
    results: [],
    says: () =>
      'Toward an edge the lines run along the strip, and the eye follows them round; in the middle arches point one way, and every corner shows.',
  }),
  'four-corners': lab({
    title: 'The figure at the four corners',
    own: figured,
    controls: ['wallsFrom', 'slope', 'rings'],
    more: ['kerf', 'planing'],
    figure: ({ values: v }) => (
      <CornerLines
        walls={lineRound(
          { ...v, length: v.outsideLength, width: v.outsideWidth },
          isPair(v),
          begins * v.outsideHeight,
        )}
        high={v.outsideHeight}
      />
    ),
    results: [
      row(stepAtCut, (v) => ({ k: v.kerf, a: v.slope }), {
        ...step,
        label: 'step where one saw cut parted two walls',
      }),
      row(stepAtFourth, (v) => ({ L: v.outsideLength, W: v.outsideWidth, k: v.kerf, a: v.slope }), {
        ...step,
        label: 'step at the fourth corner of one strip',
        when: (v) => !isPair(v),
      }),
      row(stepBetweenLeaves, (v) => ({ k: v.kerf, p: v.planing, r: v.rings }), {
        ...step,
        label: 'step where two leaves meet',
        when: isPair,
      }),
    ],
    says: (v) =>
      isPair(v) ? (
        <>
          Two corners run on; at the two mirrored ones the lines are{' '}
          <Fine of={stepBetweenLeaves.compute({ k: v.kerf, p: v.planing, r: v.rings })} /> apart.
        </>
      ) : (
        <>
          Three corners run on; at the fourth the lines are{' '}
          <Fine of={stepAtFourth.compute({ L: v.outsideLength, W: v.outsideWidth, k: v.kerf, a: v.slope })} />{' '}
          apart.
        </>
      ),
  }),
  'row-on-board': {
    title: 'The row of walls on the board',
    figure: RowOnBoard,
    controls: ['boardLength', 'kerf', 'joint'],
    more: ['wallsFrom'],
    results: ['wallsTogether', 'boardNeeded', 'boardSpare'],
    says: (v) =>
      v.boardSpare < 0 ? (
        <>
          The last wall would be <Quantity value={-v.boardSpare} kind="length" /> short.
        </>
      ) : (
        <>
          <Quantity value={v.boardSpare} kind="length" /> is left for both ends together.
        </>
      ),
  },
};

export const lesson = { labs, guesses: grainRoundTheCornerGuesses, model: modelOf(board) };
export default islandOf(lesson);
