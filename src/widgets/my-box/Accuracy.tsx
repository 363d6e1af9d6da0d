/**
 * What to expect of the reader's own errors: worst case and a few thousand boxes cut at random. Counted when the section
 * is open and the reader's hand has rested for a moment, never while a slider moves.
 */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Design } from '../../box/design.ts';
import { cutOf, errorsOf, type LidClearance } from '../../box/expected.ts';
import type { Plan } from '../../box/parts/plan.ts';
import {
  costliest,
  type Errors,
  type Expected,
  type RandomRun,
  randomRun,
  worstCase,
} from '../../calc/accuracy.ts';
import {
  diagonalDifference,
  endStep,
  mitreGapAdded,
  mitreGapOfLength,
  mitreGapRandom,
} from '../../calc/squareness.ts';
import { Histogram } from '../../figures/Histogram.tsx';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import type { UnitSystem } from '../../units/index.ts';
import { RelationLine } from '../ResultLine.tsx';

type Planned = Design & { readonly plan: Plan };
const isPlanned = (design: Design): design is Planned => design.plan !== undefined;

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

const Length = ({ value }: { value: number }) => <Quantity value={value} kind="length" digits={2} />;

function Numbers({ found: { run, worst, costs, lid } }: { found: Found }) {
  const rows = [
    ['gap at the worst corner', 'corner'],
    ['a corner leans over the length of an end by', 'square'],
    ...(lid === 'none' ? [] : [[`play left for the lid, ${lid}`, 'lid'] as const]),
  ] as const;
  const [first] = costs;
  return (
    <>
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

/** The formulas behind it, each with its reason. */
function Relations({ design, units }: { design: Planned; units: UnitSystem }) {
  const { plan, box } = design;
  const shown = { kind: 'length', digits: 2, units } as const;
  const e = box.angleError;
  return (
    <div>
      {cutOf(design).cut.mitred ? (
        <>
          <RelationLine
            {...shown}
            label="last corner, all cuts off the same way"
            of={mitreGapAdded}
            given={{ t: plan.wall, e }}
            rule="eight-cuts-of-a-miter"
          />
          <RelationLine
            {...shown}
            label="last corner, each cut off its own way"
            of={mitreGapRandom}
            given={{ t: plan.wall, e }}
            rule="eight-cuts-of-a-miter"
          />
          <RelationLine
            {...shown}
            label="miter that unequal lengths hold open"
            of={mitreGapOfLength}
            given={{ d: 2 * box.lengthError }}
          />
        </>
      ) : (
        <RelationLine
          {...shown}
          label="step of an end out of square"
          of={endStep}
          given={{ w: plan.height, e }}
          rule="first-end-square-before-the-second"
        />
      )}
      <RelationLine
        {...shown}
        label="difference of the diagonals, racked by that angle"
        of={diagonalDifference}
        given={{ a: plan.length - 2 * plan.wall, b: plan.width - 2 * plan.wall, e }}
      />
    </div>
  );
}

export function Accuracy({ design, units }: { design: Design; units: UnitSystem }) {
  const open = useSignal(false);
  const found = useSignal<Found | undefined>(undefined);
  const isOpen = open.value;
  useEffect(() => {
    if (!isOpen) return;
    const later = setTimeout(() => {
      found.value = isPlanned(design) ? find(design) : undefined;
    }, rest);
    return () => clearTimeout(later);
  }, [isOpen, design]);
  return (
    <details
      class="more accuracy"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>what to expect of these errors</summary>
      {isOpen && !isPlanned(design) && <p>No room is left between the walls.</p>}
      {isOpen && isPlanned(design) && (
        <>
          {found.value ? <Numbers found={found.value} /> : <p role="status">Cutting {boxes} boxes …</p>}
          <Relations design={design} units={units} />
          <p class="help">
            Each cut draws its own error, evenly between the two ends you gave. Parts are stiff and the glue
            fills nothing. The same boxes every time.
          </p>
        </>
      )}
    </details>
  );
}
