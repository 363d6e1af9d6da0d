/** What the reader measured on the box that is worked on, and the form for one more. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { modelOf } from '../../../box/subjects/model.ts';
import { isMeasurable, type Measurable, measurables } from '../../../box/subjects/movement/measured.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';
import { addMeasurements, kept, loadMeasurements } from '../../../notebook/measure/measurements.ts';
import { measurementsCsv, readMeasurementsCsv } from '../../../notebook/measure/measurements-csv.ts';
import { href } from '../../kit/href.ts';
import { useStore } from '../../kit/use-store.ts';
import { CsvBar } from './CsvBar.tsx';
import { MeasuredThing } from './MeasuredThing.tsx';
import { MeasureForm } from './MeasureForm.tsx';

const model = modelOf(movement);

export function BoxMeasurements() {
  const store = useStore(model);
  useEffect(loadMeasurements, []);
  const after = useSignal('');
  const values = store.values.value;
  const all = kept.value.measurements;
  const mine = all.filter(({ box }) => box === values.name);
  const others = [...new Set(all.filter(({ box }) => box !== values.name).map(({ box }) => box))];
  const things = (Object.keys(measurables) as Measurable[])
    .map((what) => ({ what, entries: mine.filter((entry) => entry.what === what) }))
    .filter(({ entries }) => entries.length > 0);
  const unknown = mine.filter(({ what }) => !isMeasurable(what)).length;
  return (
    <section aria-labelledby="gaps" ref={store.ref}>
      <h2 id="gaps">Gaps and sizes, season by season</h2>
      <p>
        The box is <a href={href('my-box/')}>{values.name}</a>. What it should measure follows from its
        design, for wood that has settled in the air you write down, or has what a meter reads.
      </p>
      <MeasureForm values={values} system={store.units.value} />
      <p role="status" class="screen-only">
        {after.value}
      </p>
      {things.map(({ what, entries }) => (
        <MeasuredThing key={what} what={what} values={values} entries={entries} after={after} />
      ))}
      {things.length === 0 && <p>Nothing is measured on this box yet.</p>}
      {unknown > 0 && <p>{unknown} more were brought in under names that this page does not know.</p>}
      {others.length > 0 && (
        <p>
          Also kept, for other boxes: {others.join(', ')}. Open such a design on{' '}
          <a href={href('my-box/')}>my box</a> to compare.
        </p>
      )}
      <CsvBar
        name="measurements"
        text={all.length > 0 ? () => measurementsCsv(all, store.units.value) : undefined}
        read={readMeasurementsCsv}
        add={addMeasurements}
      />
    </section>
  );
}
