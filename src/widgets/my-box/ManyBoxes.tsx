/**
 * What to expect of the reader's own errors: a few thousand boxes cut at random, as numbers and as a histogram. Counted
 * when the reader's hand has rested for a moment, never while a slider moves.
 */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import { cutOf, errorsOf, type LidClearance } from '../../box/design/expected.ts';
import type { Plan } from '../../box/design/plan.ts';
import {
  costliest,
  type Errors,
  type Expected,
  type RandomRun,
  randomRun,
  worstCase,
} from '../../calc/square/accuracy.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { Histogram } from '../../figures/square/Histogram.tsx';
import { useRested } from '../kit/follow.ts';

/** The same boxes every time. */
const seed = 28;
const boxes = 3000;
/** ms of rest before the boxes are cut. */
const rest = 300;

const names: Readonly<Record<keyof Errors, string>> = {
  angle: 'angle of a cut',
  length: 'length of a part',
  step: 'step of the finger jig',
};

interface Found {
  readonly run: RandomRun;
  readonly worst: Expected;
  readonly costs: ReturnType<typeof costliest>;
  readonly lid: LidClearance;
}

const Length = ({ value }: { value: number }) => <Quantity value={value} kind="length" as="fine" />;

function Numbers({ found: { run, worst, costs, lid } }: { found: Found }) {
  const rows = [
    ['gap at the worst corner', 'corner'],
    ['a corner leans over the length of an end by', 'square'],
    ...(lid === 'none' ? [] : [[`play left for the lid, ${lid}`, 'lid'] as const]),
  ] as const;
  const [first] = costs;
  return (
    <>
      <section class="scroll" aria-label="Errors of many boxes" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">of {run.boxes} boxes</th>
              <th scope="col">half better than</th>
              <th scope="col">95 of 100 better than</th>
              <th scope="col">worst case</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(([words, key]) => (
              <tr key={key}>
                <th scope="row">{words}</th>
                {[run.half, run.most, worst].map((one, index) => (
                  <td key={index}>
                    <Length value={one[key]} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {lid !== 'none' && (
        <p>
          The lid jams in <Quantity value={run.jams * 100} kind="percent" digits={1} /> of them.
        </p>
      )}
      {first && first.saves > 0.005 ? (
        <p>
          What costs most: the {names[first.error]}. Without that error the gap of 95 in 100 boxes would be{' '}
          <Length value={first.saves} /> smaller.
        </p>
      ) : (
        <p>None of the errors costs much at the corners.</p>
      )}
      <Histogram
        values={run.all.map(({ corner }) => corner)}
        half={run.half.corner}
        most={run.most.corner}
        worst={worst.corner}
        what="gap at the worst corner"
      />
    </>
  );
}

type Planned = Design & { readonly plan: Plan };
const isPlanned = (design: Design): design is Planned => design.plan !== undefined;

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

export function ManyBoxes({ design }: { design: Design }) {
  const found = useSignal<Found | undefined>(undefined);
  const rested = useRested(design, rest);
  useEffect(() => {
    found.value = isPlanned(rested) ? find(rested) : undefined;
  }, [rested]);
  if (!isPlanned(design)) return <p>No room is left between the walls.</p>;
  return (
    <>
      {found.value ? <Numbers found={found.value} /> : <p role="status">Cutting {boxes} boxes …</p>}
      <p class="help">
        Each cut draws its own error, evenly between the two ends you gave. Parts are stiff and the glue fills
        nothing. The same boxes every time.
      </p>
    </>
  );
}
