/**
 * What to expect of the reader's own errors: worst case and a few thousand boxes cut at random. Counted when the section
 * is open and the reader's hand has rested for a moment, never while a slider moves.
 */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import { cutOf, errorsOf } from '../../box/design/expected.ts';
import type { Plan } from '../../box/design/plan.ts';
import { costliest, randomRun, worstCase } from '../../calc/square/accuracy.ts';
import type { UnitSystem } from '../../units/index.ts';
import { useRested } from '../kit/follow.ts';
import { useOpen } from '../kit/use-open.ts';
import { AccuracyNumbers, type Found } from './AccuracyNumbers.tsx';
import { SquarenessLines } from './SquarenessLines.tsx';

type Planned = Design & { readonly plan: Plan };
const isPlanned = (design: Design): design is Planned => design.plan !== undefined;

/** The same boxes every time. */
const seed = 28;
const boxes = 3000;
/** ms of rest before the boxes are cut. */
const rest = 300;

function find(design: Planned): Found {
  const { cut, lid } = cutOf(design);
  const errors = errorsOf(design);
  return {
    run: randomRun(cut, errors, seed, boxes),
    worst: worstCase(cut, errors),
    costs: costliest(cut, errors, seed),
    lid,
  };
}

export function Accuracy({ design, units }: { design: Design; units: UnitSystem }) {
  const { open, fold } = useOpen();
  const found = useSignal<Found | undefined>(undefined);
  const isOpen = open.value;
  const rested = useRested(design, rest);
  useEffect(() => {
    if (isOpen) found.value = isPlanned(rested) ? find(rested) : undefined;
  }, [isOpen, rested]);
  return (
    <details class="more accuracy" {...fold}>
      <summary>what to expect of these errors</summary>
      {isOpen && !isPlanned(design) && <p>No room is left between the walls.</p>}
      {isOpen && isPlanned(design) && (
        <>
          {found.value ? (
            <AccuracyNumbers found={found.value} />
          ) : (
            <p role="status">Cutting {boxes} boxes …</p>
          )}
          <SquarenessLines design={design} units={units} />
          <p class="help">
            Each cut draws its own error, evenly between the two ends you gave. Parts are stiff and the glue
            fills nothing. The same boxes every time.
          </p>
        </>
      )}
    </details>
  );
}
