/** What was measured of one thing of the box, beside what was predicted; drawn, and what it says of wood and air. */
import type { Signal } from '@preact/signals';
import {
  levelOf,
  type Measurable,
  measurables,
  moistureBy,
  predicted,
} from '../../../box/subjects/movement/measured.ts';
import type { MovementValues } from '../../../box/subjects/movement/results.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { MeasuredSeasons } from '../../../figures/movement/MeasuredSeasons.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { dayNumber, dayWords } from '../../../notebook/measure/calendar.ts';
import { type Measurement, takeMeasurement } from '../../../notebook/measure/measurements.ts';
import { OwnUnits } from '../../kit/late/OwnUnits.tsx';
import { SeenSays } from './SeenSays.tsx';

const levelWords = {
  0.2: 'within 0.2 mm (0.008 in)',
  0.4: 'within 0.4 mm (1/64 in)',
  0.8: 'within 0.8 mm (1/32 in)',
} as const;

/** A length, and what a small one comes to: hundredths or thousandths. */
const Exact = ({ value }: { value: number }) => <Quantity value={value} kind="length" as="exact" />;

interface MeasuredThingProps {
  what: Measurable;
  values: MovementValues;
  entries: readonly Measurement[];
  /** Where the reader goes on when a row is taken out. */
  after: Signal<string>;
}

export function MeasuredThing({ what, values, entries, after }: MeasuredThingProps) {
  const rows = entries.map((entry) => {
    const moisture = moistureBy(entry);
    const foreseen = isRefused(moisture) ? moisture : predicted(what, values, moisture.moisture);
    return {
      entry,
      moisture: isRefused(moisture) ? undefined : moisture.moisture,
      predicted: isRefused(foreseen) ? undefined : foreseen.value,
      why: isRefused(foreseen) ? foreseen.refused : undefined,
    };
  });
  const met = rows.flatMap((row) =>
    row.moisture === undefined || row.predicted === undefined
      ? []
      : [{ moisture: row.moisture, measured: row.entry.measured, predicted: row.predicted }],
  );
  const reading = Math.max(...entries.map((entry) => entry.reading));
  const { label } = measurables[what];
  return (
    <section class="measured-thing" aria-label={label}>
      <h3>{label}</h3>
      <MeasuredSeasons
        label={label}
        points={rows.map(({ entry, predicted: foreseen }) => ({
          day: dayNumber(entry.date) ?? 0,
          words: dayWords(entry.date),
          measured: entry.measured,
          predicted: foreseen,
          reading: entry.reading,
        }))}
      />
      <table class="measured-rows">
        <thead>
          <tr>
            <th scope="col">day</th>
            <th scope="col">predicted</th>
            <th scope="col">measured</th>
            <th scope="col">difference</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ entry, moisture, predicted: foreseen, why }, at) => (
            <tr key={at}>
              <th scope="row">
                {dayWords(entry.date)}
                <small>
                  {entry.meter === undefined ? (
                    <>
                      <Quantity value={entry.humidity ?? Number.NaN} kind="percent" />,{' '}
                      <Quantity value={entry.temperature ?? Number.NaN} kind="temperature" digits={0} />
                      {moisture !== undefined && (
                        <>
                          : wood at <Quantity value={moisture} kind="percent" digits={1} />
                        </>
                      )}
                    </>
                  ) : (
                    <>
                      meter <Quantity value={entry.meter} kind="percent" digits={1} />
                    </>
                  )}
                </small>
                <button
                  type="button"
                  class="quiet screen-only"
                  aria-label={`take out ${label}, ${dayWords(entry.date)}`}
                  onClick={() => {
                    takeMeasurement(entry);
                    after.value = `Taken out: ${label}, ${dayWords(entry.date)}.`;
                  }}
                >
                  take out
                </button>
              </th>
              <td>{foreseen === undefined ? <small>{why}</small> : <Exact value={foreseen} />}</td>
              <td>
                <Exact value={entry.measured} />
                <small>
                  ± <Exact value={entry.reading} />
                </small>
              </td>
              <td>{foreseen !== undefined && <Difference entry={entry} foreseen={foreseen} />}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <SeenSays what={what} values={values} met={met} reading={reading} />
    </section>
  );
}

function Difference({ entry, foreseen }: { entry: Measurement; foreseen: number }) {
  const difference = entry.measured - foreseen;
  if (Math.abs(difference) <= entry.reading + 1e-9)
    return (
      <>
        none
        <small>it is within what the tool reads to</small>
      </>
    );
  const level = levelOf(difference);
  return (
    <>
      <Exact value={Math.abs(difference)} /> {difference > 0 ? 'more' : 'less'}
      <small>
        <OwnUnits of={level ? levelWords[level] : 'more than 0.8 mm (1/32 in) off'} />
      </small>
    </>
  );
}
