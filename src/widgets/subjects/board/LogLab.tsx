/** A log end on which the reader drags and turns a board: end grain, coefficients, and the dried shape. */
import { useId } from 'preact/hooks';
import { woodById } from '../../../box/wood/woods.ts';
import { cutOf, ringAngle } from '../../../calc/board/rings.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { DriedPiece } from '../../../figures/board/DriedPiece.tsx';
import { LogEnd } from '../../../figures/board/LogEnd.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { type Store, useStore } from '../../kit/use-store.ts';
import { LabFrame } from '../../lesson/Lab.tsx';
import { BoardHandle } from './BoardHandle.tsx';
import { Drying, PieceControl, Places } from './controls.tsx';
import { LogNumbers } from './LogNumbers.tsx';
import { dried, impossible, log, moisture, piece } from './state.ts';

const Degrees = ({ value }: { value: number }) => <Quantity value={value} kind="angle" digits={0} />;

// Each part reads for itself what it shows, so that a drag redraws no more than it moves.
export function LogLab() {
  const store = useStore();
  return (
    <LabFrame
      title="A board in its log"
      picture={<Picture store={store} />}
      controls={
        <>
          <Places />
          {(['across', 'up', 'turn'] as const).map((of) => (
            <PieceControl key={of} of={of} store={store} />
          ))}
          <details class="more">
            <summary>more to change</summary>
            <PieceControl of="width" store={store} />
            <PieceControl of="thickness" store={store} />
            <Drying store={store} />
          </details>
        </>
      }
      results={<LogNumbers store={store} />}
    />
  );
}

function Picture({ store }: { store: Store }) {
  const help = useId();
  const board = piece.value;
  const { from, to } = moisture.value;
  const found = dried(woodById(store.values.value.species));
  const why = impossible.value;
  const angle = ringAngle(board);
  const cut = cutOf(angle);
  return (
    <>
      <BoardHandle system={store.units.value} help={help}>
        <LogEnd
          piece={board}
          ringWidth={log.ringWidth}
          possible={!why}
          description={`A log end with its rings, and a board marked on it. ${why?.refused ?? `Its rings meet the wide face at ${Math.round(angle)} degrees: ${cut}.`}`}
        />
      </BoardHandle>
      <p class="help" id={help}>
        Drag the board; turn it by its knob. Keys: arrows move it, [ and ] turn it, with Shift in larger
        steps. The log is made up.
      </p>
      {isRefused(found) ? (
        <p class="says message" role="status">
          {found.refused}
        </p>
      ) : (
        <>
          <DriedPiece
            piece={board}
            shape={found.shape}
            log={log}
            description={`The end of the board before, dashed, and after going from ${from} to ${to} % moisture content, with the change magnified.`}
          />
          <p class="says">
            This board is {cut}: its rings meet the wide face at <Degrees value={angle} /> in the middle, at{' '}
            <Degrees value={ringAngle(board, [-board.width / 2, 0])} /> and{' '}
            <Degrees value={ringAngle(board, [board.width / 2, 0])} /> at the edges. From {from} to {to} %
            moisture its bark side {bend(found.shape[found.shape.bark].cup)}.
          </p>
        </>
      )}
    </>
  );
}

/** A cup in words; under a hundredth of a millimeter it is flat. */
function bend(cup: number) {
  if (Math.abs(cup) < 0.005) return 'stays flat';
  return (
    <>
      goes {cup < 0 ? 'crowned' : 'hollow'} by <Quantity value={Math.abs(cup)} kind="length" as="fine" />
    </>
  );
}
