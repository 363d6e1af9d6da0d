/** What moves the board: sliders that are twins of the handles, places to jump to, and the drying. */

import { Control, NumberControl } from '../../kit/Control.tsx';
import type { Store } from '../../kit/use-store.ts';
import { fields } from './fields.ts';
import { moisture, piece, place } from './state.ts';

/** Middle of the board, mm from the pith, for each way of sawing; its turn is 0. */
const places = {
  'flat-sawn': () => [0, 70],
  'rift-sawn': () => [65, 65],
  'quarter-sawn': (width: number) => [width / 2 + 25, 0],
  'with the pith': () => [0, 0],
} as const satisfies Record<string, (width: number) => readonly [number, number]>;

/** Jumps to where a board of each kind comes from. */
export function Places() {
  return (
    <p class="places">
      {Object.entries(places).map(([word, center]) => (
        <button
          key={word}
          type="button"
          class="quiet"
          onClick={() => place({ center: center(piece.value.width), turn: 0 })}
        >
          {word}
        </button>
      ))}
    </p>
  );
}

/** The sliders of the board's place and size. */
export function PieceControl({
  of,
  store,
}: {
  of: 'up' | 'across' | 'turn' | 'width' | 'thickness';
  store: Store;
}) {
  const { center, ...rest } = piece.value;
  const value = of === 'up' ? center[1] : of === 'across' ? center[0] : rest[of];
  return (
    <NumberControl
      field={fields[of]}
      value={value}
      system={store.units.value}
      set={(to) =>
        place(
          of === 'up'
            ? { center: [center[0], to] }
            : of === 'across'
              ? { center: [to, center[1]] }
              : { [of]: to },
        )
      }
    />
  );
}

/** Which wood, and the drying. The wood is that of the reader's box. */
export function Drying({ store }: { store: Store }) {
  return (
    <>
      <Control name="species" store={store} />
      {(['from', 'to'] as const).map((of) => (
        <NumberControl
          key={of}
          field={fields[of]}
          value={moisture.value[of]}
          system={store.units.value}
          set={(to) => {
            moisture.value = { ...moisture.value, [of]: to };
          }}
        />
      ))}
    </>
  );
}
