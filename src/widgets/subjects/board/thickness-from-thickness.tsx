/** Labs of the lesson on thickness from thickness. */
import type { InputsOf } from '../../../box/core/field.ts';
import { number } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { board } from '../../../box/subjects/board/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import type { Values } from '../../../box/whole/index.ts';
import { dryFromWet } from '../../../calc/air/wet-basis.ts';
import { partsKeptJoined, shortestMachineLength } from '../../../calc/board/stock.ts';
import { JoinedStrip } from '../../../figures/board/JoinedStrip.tsx';
import { ResawStack } from '../../../figures/board/ResawStack.tsx';
import { WetAndDry } from '../../../figures/board/WetAndDry.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { type LabSpec, lab } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { thicknessFromThicknessGuesses } from './thickness-from-thickness-guesses.tsx';

const moisture = {
  wet: number('moisture, as a share of the wet wood', 'percent', { low: 0, high: 60, step: 1, start: 20 }),
};
type Wet = Values & InputsOf<typeof moisture>;
const dryRow = rowsOf<Wet>()(dryFromWet, ({ wet }) => ({ M_w: wet }), {
  label: 'moisture, as a share of the dry wood',
  kind: 'percent',
  digits: 0,
});

const joined = (part: (v: Values) => number, label: string) =>
  rowsOf<Values>()(partsKeptJoined, (v) => ({ s: shortestMachineLength, p: part(v), k: v.kerf }), {
    label,
    kind: 'count',
    rule: 'short-pieces-stay-joined',
  });
const endsJoined = joined((v) => v.outsideWidth, 'ends that must stay together');
const sidesJoined = joined((v) => v.outsideLength, 'sides that must stay together');

const labs: Record<string, LabSpec> = {
  slices: {
    title: 'Walls out of one thickness',
    figure: ResawStack,
    controls: ['kerf', 'planing'],
    more: ['boardThickness', 'wall'],
    results: ['slicesOfBoard', 'pairThickness'],
    says: (v) => (
      <>
        <Quantity value={v.boardThickness} kind="length" /> give {v.slicesOfBoard || 'no'}{' '}
        {v.slicesOfBoard === 1 ? 'wall' : 'walls'} of <Quantity value={v.wall} kind="length" />.
      </>
    ),
  },
  'wet-basis': lab({
    title: 'One amount of water, two percentages',
    own: moisture,
    controls: ['wet'],
    figure: ({ values: v }) => <WetAndDry wet={v.wet} dry={dryFromWet.compute({ M_w: v.wet })} />,
    results: [dryRow],
    says: (v) => (
      <>
        A meter that says {v.wet} % of the wet wood means{' '}
        <Quantity value={dryFromWet.compute({ M_w: v.wet })} kind="percent" digits={0} /> as this notebook
        counts.
      </>
    ),
  }),
  'joined-strip': {
    title: 'What stays in one piece',
    figure: JoinedStrip,
    controls: ['contentsLength', 'contentsWidth'],
    more: ['wall', 'kerf'],
    results: [endsJoined, sidesJoined],
    says: (v) => {
      const shortest = Math.min(v.outsideLength, v.outsideWidth);
      return shortest < shortestMachineLength ? (
        <>
          A wall of <Quantity value={shortest} kind="length" as="size" /> is too short for a planer or a
          jointer by itself.
        </>
      ) : (
        'Every wall of this box is long enough by itself, where the manual asks for no more.'
      );
    },
  },
};

export const lesson = { labs, guesses: thicknessFromThicknessGuesses, model: modelOf(board) };
export default islandOf(lesson);
