/** A series as CSV, out and in; rows that cannot be used are named with the reason. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { longestFile, type Read, type ReadCsv } from '../../../notebook/measure/measurements-csv.ts';
import { download } from '../../my-box/download.ts';

interface CsvBarProps<Entry> {
  /** "measurements" */
  name: string;
  /** The text to save; none where there is nothing to save. */
  text: (() => string) | undefined;
  read: (text: string, parse: Read) => ReadCsv<Entry>;
  add: (entries: readonly Entry[]) => void;
}

/** More refusals than these are counted only. */
const mostNamed = 8;

export function CsvBar<Entry>({ name, text, read, add }: CsvBarProps<Entry>) {
  const id = useId();
  const said = useSignal('');
  const refused = useSignal<ReadCsv<Entry>['refused']>([]);
  const bringIn = async (file: File) => {
    refused.value = [];
    if (file.size > longestFile) {
      said.value = `This file is too large to hold ${name}.`;
      return;
    }
    try {
      const { parse } = await import('../../../units/parse-late.ts');
      const found = read(await file.text(), parse);
      if (found.entries.length > 0) add(found.entries);
      refused.value = found.refused;
      said.value =
        found.whole ??
        `${found.entries.length} of ${found.entries.length + found.refused.length} rows brought in.`;
    } catch {
      said.value = 'The file could not be read here. Try again when there is a network.';
    }
  };
  return (
    <div class="csv-bar screen-only">
      {text && (
        <button
          type="button"
          class="quiet"
          onClick={() => download(`${name}.csv`, 'text/csv', `\ufeff${text()}`)}
        >
          save as CSV
        </button>
      )}
      <label for={id}>
        bring in a CSV of {name}{' '}
        <input
          id={id}
          type="file"
          accept=".csv,text/csv"
          onChange={({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            if (file) void bringIn(file);
            currentTarget.value = '';
          }}
        />
      </label>
      <div role="status">
        {said.value && <p>{said.value}</p>}
        {refused.value.length > 0 && (
          <ul>
            {refused.value.slice(0, mostNamed).map(({ row, why }) => (
              <li key={row}>
                Row {row}: {why}
              </li>
            ))}
            {refused.value.length > mostNamed && <li>and {refused.value.length - mostNamed} more</li>}
          </ul>
        )}
      </div>
    </div>
  );
}
