/** Pieces that are weighed until they are dry: the series of one of them, its details, and what it says. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { dayNumber, today } from '../../../notebook/measure/calendar.ts';
import {
  addWeighings,
  describePiece,
  kept,
  limits,
  loadMeasurements,
  longestName,
  pieceOf,
} from '../../../notebook/measure/measurements.ts';
import { readWeighingsCsv, weighingsCsv } from '../../../notebook/measure/measurements-csv.ts';
import { toField } from '../../../units/index.ts';
import { useStore } from '../../kit/use-store.ts';
import { CsvBar } from './CsvBar.tsx';
import { EntryField, leadToFault, readDraft, useDraft } from './EntryField.tsx';
import { PieceSays } from './PieceSays.tsx';

export function Weighings() {
  const { units, ref } = useStore();
  const system = units.value;
  const [piece, date, mass, thickness, scale, dry] = [
    useDraft(),
    useDraft(),
    useDraft(),
    useDraft(),
    useDraft(),
    useDraft(),
  ];
  const said = useSignal('');
  const all = kept.value.weighings;
  const names = [...new Set(all.map((one) => one.piece))];
  useEffect(() => {
    loadMeasurements();
    date.text.value ||= today();
    piece.text.value ||= kept.value.weighings.at(-1)?.piece ?? 'offcut';
  }, []);
  const name = piece.text.value.trim();
  const about = pieceOf(name);
  // What is known of a piece stands in its fields, in the reader's units.
  useEffect(() => {
    thickness.text.value = toField(about.thickness, 'length', system);
    scale.text.value = toField(about.reading, 'mass', system);
    dry.text.value = about.dry === undefined ? '' : toField(about.dry, 'mass', system);
  }, [name, about, system]);
  const keep = async () => {
    said.value = '';
    piece.message.value = name === '' || name.length > longestName ? 'Give the piece a name.' : undefined;
    date.message.value =
      dayNumber(date.text.value) === undefined ? 'Write a day of the calendar.' : undefined;
    const weight = await readDraft(mass, { kind: 'mass', within: limits.mass }, system);
    if (leadToFault([piece, date, mass]) || weight === undefined) return;
    addWeighings([{ piece: name, date: date.text.value, mass: weight }]);
    mass.text.value = '';
    said.value = `Kept: ${name}.`;
    mass.field.current?.focus();
  };
  const describe = async () => {
    const wide = await readDraft(thickness, { kind: 'length', within: limits.thickness }, system);
    const reads = await readDraft(scale, { kind: 'mass', within: limits.scale }, system);
    const ovenDry = await readDraft(dry, { kind: 'mass', within: limits.mass, optional: true }, system);
    if (leadToFault([thickness, scale, dry]) || wide === undefined || reads === undefined) return;
    describePiece(name, {
      thickness: wide,
      reading: reads,
      ...(ovenDry !== undefined && { dry: ovenDry }),
    });
    said.value = `Kept: what is known of ${name}.`;
  };
  const submit = (act: () => Promise<void>) => (event: Event) => {
    event.preventDefault();
    void act();
  };
  return (
    <section aria-labelledby="weights" ref={ref}>
      <h2 id="weights">Dry yet? A piece weighed again and again</h2>
      <p>
        Wood that dries gets lighter. Weigh an offcut as thick as your stock, on the same scale, every few
        days.
      </p>
      <form class="entry-form screen-only" noValidate onSubmit={submit(keep)}>
        <EntryField label="piece" draft={piece} names={names} />
        <EntryField label="day weighed" draft={date} type="date" />
        <EntryField label="weight" draft={mass} kind="mass" system={system} />
        <p class="wide">
          <button type="submit">keep this weight</button> <span role="status">{said.value}</span>
        </p>
      </form>
      <details class="about-piece screen-only">
        <summary>about this piece</summary>
        <form class="entry-form" noValidate onSubmit={submit(describe)}>
          <EntryField label="thickness of the piece" draft={thickness} kind="length" system={system} />
          <EntryField label="the scale reads to" draft={scale} kind="mass" system={system} />
          <EntryField
            label="oven-dry weight, if known"
            draft={dry}
            kind="mass"
            system={system}
            help="With it the moisture is known, not only whether it still changes."
          />
          <p class="wide">
            <button type="submit" class="quiet">
              keep what is known
            </button>
          </p>
        </form>
      </details>
      {names.map((one) => (
        <PieceSays
          key={one}
          name={one}
          entries={all.filter((entry) => entry.piece === one)}
          about={pieceOf(one)}
          after={said}
        />
      ))}
      <CsvBar
        name="weighings"
        text={all.length > 0 ? () => weighingsCsv(all, system) : undefined}
        read={readWeighingsCsv}
        add={addWeighings}
      />
    </section>
  );
}
