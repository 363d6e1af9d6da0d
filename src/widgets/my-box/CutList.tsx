/** The cut list, and its file for a spreadsheet. */
import type { ReadonlySignal } from '@preact/signals';
import type { Design } from '../../box/design/design.ts';
import { shownRulers } from '../../figures/parts/my-ruler.ts';
import { cutListCsv, fileNameOf } from '../../notebook/files.ts';
import { download } from './download.ts';
import { PartsTable } from './PartsTable.tsx';

export function CutList({ design }: { design: ReadonlySignal<Design> }) {
  const now = design.value;
  return (
    <>
      <PartsTable design={now} />
      <p>
        <button
          type="button"
          class="quiet"
          onClick={() => download(fileNameOf(now.box, 'csv'), 'text/csv', cutListCsv(now, shownRulers.value))}
        >
          save the cut list as CSV
        </button>
      </p>
    </>
  );
}
