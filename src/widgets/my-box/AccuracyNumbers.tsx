/** A random run in numbers and as a histogram: half of the boxes, 95 of 100, the worst case, and the error that costs most. */
import type { LidClearance } from '../../box/design/expected.ts';
import type { costliest, Errors, Expected, RandomRun } from '../../calc/square/accuracy.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { Histogram } from '../../figures/square/Histogram.tsx';

const names: Readonly<Record<keyof Errors, string>> = {
  angle: 'angle of a cut',
  length: 'length of a part',
  step: 'step of the finger jig',
};

export interface Found {
  readonly run: RandomRun;
  readonly worst: Expected;
  readonly costs: ReturnType<typeof costliest>;
  readonly lid: LidClearance;
}

const Length = ({ value }: { value: number }) => <Quantity value={value} kind="length" digits={2} />;

export function AccuracyNumbers({ found: { run, worst, costs, lid } }: { found: Found }) {
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
