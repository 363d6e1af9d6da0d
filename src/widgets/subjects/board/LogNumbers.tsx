/** What follows from a board's place in its log: movement of width and thickness, and what the dried shape measures. */
import { useRef } from 'preact/hooks';
import { woodById } from '../../../box/wood/woods.ts';
import type { LogShape } from '../../../calc/board/log-shape.ts';
import { ringAngle } from '../../../calc/board/rings.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { work } from '../../../calc/core/working.ts';
import { movementOfThickness, movementOfWidth } from '../../../calc/movement/movement.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { RelationLine } from '../../kit/ResultLine.tsx';
import type { Store } from '../../kit/use-store.ts';
import { dried, impossible, piece } from './state.ts';

export function LogNumbers({ store }: { store: Store }) {
  const values = store.values.value;
  const stands = useRef<HTMLParagraphElement>(null);
  const board = piece.value;
  const found = dried(woodById(values.species));
  if (impossible.value) return null;
  const angle = ringAngle(board);
  const given = { e_T: values.tangentialCoefficient, e_R: values.radialCoefficient, theta: angle };
  const line = {
    kind: 'number',
    units: store.units.value,
    rule: 'read-the-end-grain',
  } as const;
  return (
    <>
      <RelationLine
        {...line}
        label="movement of the width, per point of moisture"
        working={work(movementOfWidth, given)}
      />
      <RelationLine
        {...line}
        label="movement of the thickness, per point"
        working={work(movementOfThickness, given)}
      />
      {!isRefused(found) && <Exact shape={found.shape} width={board.width} thickness={board.thickness} />}
      <p tabIndex={-1} ref={stands}>
        {Math.round(values.ringAngle) === Math.round(angle) ? (
          'Your box is calculated with this ring angle.'
        ) : (
          <button
            type="button"
            class="quiet"
            onClick={() => {
              store.set({ ringAngle: Math.round(angle) });
              // The button goes: what stands in its place is read next.
              stands.current?.focus();
            }}
          >
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
            <Quantity value={value} kind="length" as="fine" />
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
            Every small bit of wood wants to shrink by one share along its ring and by a smaller one toward
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
