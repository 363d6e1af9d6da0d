/** The cells as a link or a file, and a file as the cells. */
import { before, bringBack, linkToScratch, openCells } from '../../notebook/scratch/brought.ts';
import { readCellsFile, writeCellsFile } from '../../notebook/scratch/cells.ts';
import { cellsNow } from '../../notebook/scratch/kept.ts';
import { useCopiedLink } from '../kit/use-copied-link.ts';
import { download } from '../my-box/download.ts';

export function KeepCells() {
  const { said, shown, copy } = useCopiedLink(() => linkToScratch(location.href), {
    copied: 'The link is copied. It holds the cells, and no box: each reader’s own box answers.',
    tooLong: 'These cells are too long for a link: save them as a file.',
  });
  return (
    <>
      <p class="buttons">
        <button type="button" class="quiet" onClick={copy}>
          copy a link
        </button>{' '}
        <button
          type="button"
          class="quiet"
          onClick={() => download('scratch-cells.json', 'application/json', writeCellsFile(cellsNow()))}
        >
          save as a file
        </button>{' '}
        <label class="file">
          open a file{' '}
          <input
            type="file"
            accept=".json,application/json"
            onChange={async ({ currentTarget }) => {
              const [file] = currentTarget.files ?? [];
              currentTarget.value = '';
              if (file) said.value = openCells(await readCellsFile(file)) ? `${file.name} is open.` : '';
            }}
          />
        </label>
        {before.value && (
          <>
            {' '}
            <button type="button" class="quiet" onClick={bringBack}>
              bring back the cells from before
            </button>
          </>
        )}
      </p>
      <p role="status">{said.value}</p>
      {shown.value && <textarea readOnly rows={3} aria-label="link to these cells" value={shown.value} />}
    </>
  );
}
