/** A log end on which the reader drags and turns a board: end grain, coefficients, and the dried shape. */
import { useId } from 'preact/hooks';
import { woodById } from '../../box/woods.ts';
import type { LogShape } from '../../calc/log-shape.ts';
import { movementOfThickness, movementOfWidth } from '../../calc/movement.ts';
import { isRefused } from '../../calc/refusal.ts';
import { cutOf, ringAngle } from '../../calc/rings.ts';
import { DriedPiece } from '../../figures/DriedPiece.tsx';
import { LogEnd } from '../../figures/LogEnd.tsx';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { useStore } from '../../notebook/use-store.ts';
import { LabFrame } from '../Lab.tsx';
import { RelationLine } from '../ResultLine.tsx';
import { BoardHandle } from './BoardHandle.tsx';
import { Drying, PieceControl, Places } from './controls.tsx';
import { dried, impossible, log, moisture, piece } from './state.ts';

const Degrees = ({ value }: { value: number }) => <Quantity value={value} kind="angle" digits={0} />;

type Store = ReturnType<typeof useStore>;

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
      results={<Numbers store={store} />}
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
      goes {cup < 0 ? 'crowned' : 'hollow'} by{' '}
      <Quantity value={Math.abs(cup)} kind="length" digits={2} denominator={1000} />
    </>
  );
}

function Numbers({ store }: { store: Store }) {
  const values = store.values.value;
  const board = piece.value;
  const found = dried(woodById(values.species));
  if (impossible.value) return null;
  const angle = ringAngle(board);
  const line = {
    given: { e_T: values.tangentialCoefficient, e_R: values.radialCoefficient, theta: angle },
    kind: 'number',
    units: store.units.value,
    rule: 'read-the-end-grain',
  } as const;
  return (
    <>
      <RelationLine {...line} label="movement of the width, per point of moisture" of={movementOfWidth} />
      <RelationLine {...line} label="movement of the thickness, per point" of={movementOfThickness} />
      {!isRefused(found) && <Exact shape={found.shape} width={board.width} thickness={board.thickness} />}
      <p>
        {Math.round(values.ringAngle) === Math.round(angle) ? (
          'Your box is reckoned with this ring angle.'
        ) : (
          <button type="button" class="quiet" onClick={() => store.set({ ringAngle: Math.round(angle) })}>
            put this ring angle in my box
          </button>
        )}
      </p>
    </>
  );
}

/** What the dried shape measures, read off the exact map. */
function Exact({ shape, width, thickness }: { shape: LogShape; width: number; thickness: number }) {
  const sizes = [
    ['change of the width', shape.width - width],
    ['change of the thickness, in the middle', shape.thickness.middle - thickness],
  ] as const;
  return (
    <>
      {sizes.map(([label, value]) => (
        <p key={label} class="result">
          {label}{' '}
          <strong>
            <Quantity value={value} kind="length" digits={2} denominator={1000} />
          </strong>
        </p>
      ))}
      <p class="result">
        middle lines out of square{' '}
        <strong>
          <Quantity value={Math.abs(shape.diamonding)} kind="angle" digits={2} />
        </strong>
      </p>
      <details class="result">
        <summary>
          dried shape <span class="why">why?</span>
        </summary>
        <div class="reason">
          <p>
            Every small bit of wood wants to shrink by one share along its ring and by a smaller one towards
            the pith. Moving each point nearer to the pith by the smaller share, and closing the angles about
            the pith by what the rings want beyond that, gives every bit exactly what it wants. The outline is
            the board’s, moved point by point.
          </p>
          <p>
            Evidence: derived. It takes the rings as circles, the wood as equally moist all through, and
            nothing as holding it. Where the rings turn within the board, this shape is right and the two
            figures per point, which take them as straight, are only near.
          </p>
        </div>
      </details>
    </>
  );
}
