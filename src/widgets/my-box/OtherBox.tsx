/** Another box beside the reader's own, until it is closed. */
import type { ReadonlySignal, Signal } from '@preact/signals';
import type { Design } from '../../box/design/design.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { Late } from './Late.tsx';

interface Props {
  mine: ReadonlySignal<Design>;
  other: Signal<Box | undefined>;
}

export function OtherBox({ mine, other }: Props) {
  const box = other.value;
  if (!box) return null;
  return (
    <Late>
      {({ Compare }) => (
        <Compare
          mine={mine.value}
          other={box}
          onClose={() => {
            other.value = undefined;
          }}
        />
      )}
    </Late>
  );
}
