/** One more measurement of the reader's box: the day, what was measured, with which tool, and the air. Over 150 lines: one form. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { type Measurable, measurables } from '../../../box/subjects/movement/measured.ts';
import type { MovementValues } from '../../../box/subjects/movement/results.ts';
import { dayNumber, today } from '../../../notebook/measure/calendar.ts';
import { addMeasurements, limits } from '../../../notebook/measure/measurements.ts';
import { INCH, type UnitSystem } from '../../../units/index.ts';
import { EntryField, leadToFault, readDraft, useDraft } from './EntryField.tsx';

/** What tools read to, in native values of both systems: common practice. */
const tools = [
  {
    id: 'rule',
    mm: 0.5,
    inch: INCH / 64,
    says: { mm: 'steel rule, to 0.5 mm', inch: 'steel rule, to 1/64 in' },
  },
  {
    id: 'feeler',
    mm: 0.05,
    inch: 0.002 * INCH,
    says: { mm: 'feeler gauge, to 0.05 mm', inch: 'feeler gauge, to 0.002 in' },
  },
  {
    id: 'caliper',
    mm: 0.1,
    inch: 0.005 * INCH,
    says: { mm: 'caliper on wood, to 0.1 mm', inch: 'caliper on wood, to 0.005 in' },
  },
] as const;

export function MeasureForm({
  values,
  system,
}: {
  values: MovementValues & { name: string };
  system: UnitSystem;
}) {
  const known = (Object.keys(measurables) as Measurable[]).filter((name) => measurables[name].when(values));
  const chosen = useSignal<Measurable | undefined>(undefined);
  const what = chosen.value && known.includes(chosen.value) ? chosen.value : known[0]!;
  const tool = useSignal('rule');
  const by = useSignal<'air' | 'meter'>('air');
  const said = useSignal('');
  const date = useDraft();
  const measured = useDraft();
  const reading = useDraft();
  const humidity = useDraft();
  const temperature = useDraft();
  const meter = useDraft();
  useEffect(() => {
    date.text.value ||= today();
  }, []);
  const given = tools.find(({ id }) => id === tool.value);
  const keep = async () => {
    said.value = '';
    const byMeter = by.value === 'meter';
    date.message.value =
      dayNumber(date.text.value) === undefined ? 'Write a day of the calendar.' : undefined;
    const value = await readDraft(measured, { kind: 'length', within: limits.measured }, system);
    const reads =
      given?.[system] ?? (await readDraft(reading, { kind: 'length', within: limits.reading }, system));
    const rh = byMeter
      ? undefined
      : await readDraft(humidity, { kind: 'percent', within: limits.humidity }, system);
    const t = byMeter
      ? undefined
      : await readDraft(temperature, { kind: 'temperature', within: limits.temperature }, system);
    const met = byMeter
      ? await readDraft(meter, { kind: 'percent', within: limits.meter }, system)
      : undefined;
    const asked = [
      date,
      measured,
      ...(given ? [] : [reading]),
      ...(byMeter ? [meter] : [humidity, temperature]),
    ];
    if (leadToFault(asked) || value === undefined || reads === undefined) return;
    addMeasurements([
      {
        box: values.name,
        date: date.text.value,
        what,
        measured: value,
        reading: reads,
        ...(rh !== undefined && { humidity: rh }),
        ...(t !== undefined && { temperature: t }),
        ...(met !== undefined && { meter: met }),
      },
    ]);
    measured.text.value = '';
    said.value = `Kept: ${measurables[what].label}.`;
    measured.field.current?.focus();
  };
  return (
    <form
      class="entry-form screen-only"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <div class="entry wide">
        <label for="measure-what">what was measured</label>
        <select
          id="measure-what"
          aria-describedby="measure-how"
          value={what}
          onChange={({ currentTarget }) => {
            chosen.value = currentTarget.value as Measurable;
          }}
        >
          {known.map((name) => (
            <option key={name} value={name}>
              {measurables[name].label}
            </option>
          ))}
        </select>
        <p class="help" id="measure-how">
          {measurables[what].how}
        </p>
      </div>
      <EntryField label="measured" draft={measured} kind="length" system={system} />
      <div class="entry">
        <label for="measure-tool">tool (common practice)</label>
        <select
          id="measure-tool"
          value={tool.value}
          onChange={({ currentTarget }) => {
            tool.value = currentTarget.value;
          }}
        >
          {tools.map(({ id, says }) => (
            <option key={id} value={id}>
              {says[system]}
            </option>
          ))}
          <option value="other">another</option>
        </select>
      </div>
      {!given && <EntryField label="the tool reads to" draft={reading} kind="length" system={system} />}
      <EntryField label="day" draft={date} type="date" />
      <div class="entry">
        <label for="measure-by">moisture of the wood from</label>
        <select
          id="measure-by"
          value={by.value}
          onChange={({ currentTarget }) => {
            by.value = currentTarget.value as 'air' | 'meter';
          }}
        >
          <option value="air">the air that day</option>
          <option value="meter">a moisture meter</option>
        </select>
      </div>
      {by.value === 'air' ? (
        <>
          <EntryField label="humidity of the air" draft={humidity} kind="percent" system={system} />
          <EntryField label="temperature" draft={temperature} kind="temperature" system={system} />
        </>
      ) : (
        <EntryField label="the meter reads" draft={meter} kind="percent" system={system} />
      )}
      <p class="wide">
        <button type="submit">keep this measurement</button> <span role="status">{said.value}</span>
      </p>
    </form>
  );
}
