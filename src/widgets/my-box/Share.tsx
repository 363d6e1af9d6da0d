/** The box as a link or a file, and a file as the box. */
import { useEffect } from 'preact/hooks';
import { change, currentBox, linkToBox } from '../../notebook/current.ts';
import { fileNameOf, readFile, writeFile } from '../../notebook/files.ts';
import { addNotes, loadNotes, notes } from '../../notebook/learning/notes.ts';
import { useCopiedLink } from '../kit/use-copied-link.ts';
import { download } from './download.ts';

export function Share() {
  const box = currentBox.value;
  const { said, shown, copy } = useCopiedLink(() => linkToBox(location.href), {
    copied: 'The link is copied. It holds the whole box.',
    tooLong: 'This box is too long for a link, with all its things and reasons: save it as a file.',
  });
  useEffect(loadNotes, []);
  const many = Object.keys(notes.value).length;
  const openFile = async (file: File | undefined) => {
    if (!file) return;
    const decoded = await readFile(file);
    if (!decoded.ok) {
      said.value = `${file.name}: ${decoded.message} Your box is as it was.`;
      return;
    }
    change(decoded.box);
    const came = addNotes(decoded.notes);
    said.value = [
      `${decoded.box.name} is open.`,
      decoded.dropped.length > 0 &&
        `Some of the file could not be used and is as in the example: ${decoded.dropped.join(', ')}.`,
      came > 0 && `${came === 1 ? 'A note' : `${came} notes`} came with it and stand beside your own.`,
    ]
      .filter(Boolean)
      .join(' ');
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
          onClick={() => download(fileNameOf(box, 'json'), 'application/json', writeFile(box, notes.value))}
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
      {many > 0 && (
        <p class="help">
          The file takes your {many === 1 ? 'note' : `${many} notes`} along; a link does not.
        </p>
      )}
      <p role="status">{said.value}</p>
      {shown.value && <textarea readOnly rows={3} aria-label="link to this box" value={shown.value} />}
    </>
  );
}
