/** The box as a link or a file, and a file as the box. */
import { change, currentBox, linkToBox } from '../../notebook/current.ts';
import { fileNameOf, readFile, writeFile } from '../../notebook/files.ts';
import { useCopiedLink } from '../kit/use-copied-link.ts';
import { download } from './download.ts';

export function Share() {
  const box = currentBox.value;
  const { said, shown, copy } = useCopiedLink(() => linkToBox(location.href), {
    copied: 'The link is copied. It holds the whole box.',
    tooLong: 'This box is too long for a link, with all its things and reasons: save it as a file.',
  });
  const openFile = async (file: File | undefined) => {
    if (!file) return;
    const decoded = await readFile(file);
    if (!decoded.ok) {
      said.value = `${file.name}: ${decoded.message} Your box is as it was.`;
      return;
    }
    change(decoded.box);
    said.value =
      decoded.dropped.length > 0
        ? `${decoded.box.name} is open. Some of the file could not be used and is as in the example: ${decoded.dropped.join(', ')}.`
        : `${decoded.box.name} is open.`;
  };
  return (
    <>
      <p class="buttons">
        <button type="button" class="quiet" onClick={copy}>
          copy a link
        </button>{' '}
        <button
          type="button"
          class="quiet"
          onClick={() => download(fileNameOf(box, 'json'), 'application/json', writeFile(box))}
        >
          save as a file
        </button>{' '}
        <label class="file">
          open a file{' '}
          <input
            type="file"
            accept=".json,application/json"
            onChange={(event) => {
              void openFile(event.currentTarget.files?.[0]);
              event.currentTarget.value = '';
            }}
          />
        </label>
      </p>
      <p role="status">{said.value}</p>
      {shown.value && <textarea readOnly rows={3} aria-label="link to this box" value={shown.value} />}
    </>
  );
}
