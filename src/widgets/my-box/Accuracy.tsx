/** What to expect of the reader's own errors, behind a fold: what counts many boxes is fetched when it is first opened. */
import { type ReadonlySignal, signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import type { UnitSystem } from '../../units/index.ts';
import { useOpen } from '../kit/use-open.ts';
import { Late } from './Late.tsx';
import type { ManyBoxes } from './ManyBoxes.tsx';

const counted = signal<typeof ManyBoxes | 'missing' | undefined>(undefined);

function fetchManyBoxes(): void {
  if (typeof counted.value === 'function') return;
  import('./ManyBoxes.tsx').then(
    (part) => {
      counted.value = part.ManyBoxes;
    },
    () => {
      counted.value = 'missing';
    },
  );
}

interface Props {
  design: ReadonlySignal<Design>;
  units: ReadonlySignal<UnitSystem>;
}

export function Accuracy({ design, units }: Props) {
  const { open, fold } = useOpen();
  useEffect(() => {
    if (open.value) fetchManyBoxes();
  }, [open.value]);
  const Counted = counted.value;
  return (
    <details class="more accuracy" {...fold}>
      <summary>what to expect of these errors</summary>
      {open.value && (
        <>
          {Counted === 'missing' ? (
            <p role="status">
              What counts many boxes could not be fetched. Close this and open it again when there is a
              network, or reload the page.
            </p>
          ) : (
            Counted && <Counted design={design.value} />
          )}
          <Late>
            {({ SquarenessLines }) => <SquarenessLines design={design.value} units={units.value} />}
          </Late>
        </>
      )}
    </details>
  );
}
