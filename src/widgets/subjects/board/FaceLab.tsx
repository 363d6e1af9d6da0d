/** The face of the same board: straight lines or arches, beside the end grain they come from. */
import { type Cut, cutOf, ringAngle } from '../../../calc/board/rings.ts';
import { BoardFace } from '../../../figures/board/BoardFace.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { useFollower } from '../../kit/follow.ts';
import { useStore } from '../../kit/use-store.ts';
import { LabFrame } from '../../lesson/Lab.tsx';
import { PieceControl, Places } from './controls.tsx';
import { impossible, log, piece } from './state.ts';

const figures: Readonly<Record<Cut, string>> = {
  'flat-sawn':
    'The face runs along the rings and shaves them: few lines, far apart, in arches where it just touches a ring.',
  'rift-sawn': 'The face cuts the rings at a slant: straight lines, a little farther apart than the rings.',
  'quarter-sawn': 'The face cuts straight across the rings: straight lines, as close as the rings.',
};

/** Follows when that is cheap: the board may be dragged in another figure, out of sight of this one. */
function Face() {
  const board = useFollower(piece).value;
  const angle = ringAngle(board);
  const cut = cutOf(angle);
  const why = impossible.value;
  if (why)
    return (
      <p class="says message" role="status">
        {why.refused}
      </p>
    );
  return (
    <>
      <BoardFace
        piece={board}
        log={log}
        description={`End grain of a ${cut} board and its face toward the bark. ${figures[cut]}`}
      />
      <p class="says">
        Rings at <Quantity value={angle} kind="angle" digits={0} /> to the face: {cut}. {figures[cut]}
      </p>
    </>
  );
}

export function FaceLab() {
  const store = useStore();
  return (
    <LabFrame
      title="The face of that board"
      picture={<Face />}
      controls={
        <>
          <Places />
          {(['across', 'up', 'turn'] as const).map((of) => (
            <PieceControl key={of} of={of} store={store} />
          ))}
        </>
      }
      results={undefined}
    />
  );
}
