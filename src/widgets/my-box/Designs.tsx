/** Named designs on the device, steps back and forward, links and files. */
import { useSignal } from '@preact/signals';
import { useEffect, useId, useRef } from 'preact/hooks';
import { exampleFor } from '../../box/subjects/example.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { change, currentBox, linkToBox, redo, undo } from '../../notebook/current.ts';
import { loadDesigns, saveDesign, unreadable } from '../../notebook/designs.ts';
import { fileNameOf, readFile, writeFile } from '../../notebook/files.ts';
import { canRedo, canUndo } from '../../notebook/history.ts';
import { units } from '../../notebook/units.ts';
import { download } from './download.ts';
import { KeptDesigns } from './KeptDesigns.tsx';
import { TextInput } from './TextInput.tsx';

export function Designs({ onCompare }: { onCompare: (box: Box | undefined) => void }) {
  const id = useId();
  const said = useSignal('');
  /** A design of the same name is kept: replace it? */
  const asks = useSignal(false);
  useEffect(loadDesigns, []);
  /** The link, where it could not be copied. */
  const shown = useSignal('');
  /** Where the reader goes on once the question about a name is answered. */
  const keeping = useRef<HTMLButtonElement>(null);
  const box = currentBox.value;
  const save = (replace: boolean) => {
    const saved = saveDesign(box, replace);
    asks.value = !saved.ok && saved.why === 'same name';
    said.value = saved.ok ? `${box.name} is kept on this device.` : saved.message;
  };
  const open = (chosen: Box) => {
    change(chosen);
    said.value = `${chosen.name} is open.`;
  };
  const copyLink = async () => {
    const link = linkToBox(location.href);
    if (!link) {
      said.value = 'This box is too long for a link, with all its things and reasons: save it as a file.';
      return;
    }
    try {
      await navigator.clipboard.writeText(link);
      said.value = 'The link is copied. It holds the whole box.';
    } catch {
      shown.value = link;
      said.value = 'This browser does not let the page copy. The link stands below, for you to copy.';
    }
  };
  const openFile = async (file: File | undefined) => {
    if (!file) return;
    const decoded = await readFile(file);
    if (decoded.ok) {
      open(decoded.box);
      if (decoded.dropped.length > 0)
        said.value = `${decoded.box.name} is open. Some of the file could not be used and is as in the example: ${decoded.dropped.join(', ')}.`;
    } else said.value = `${file.name}: ${decoded.message} Your box is as it was.`;
  };
  return (
    <section class="designs" aria-label="Designs and files">
      <h2>Designs and files</h2>
      <p class="buttons">
        <button type="button" class="quiet" aria-disabled={!canUndo.value} onClick={undo}>
          one step back
        </button>{' '}
        <button type="button" class="quiet" aria-disabled={!canRedo.value} onClick={redo}>
          forward again
        </button>{' '}
        <button type="button" class="quiet" onClick={() => open(exampleFor(units.value))}>
          start from the example
        </button>
      </p>
      <p>
        <label for={id}>name of this box</label>{' '}
        <TextInput
          id={id}
          maxLength={60}
          value={box.name}
          set={(name) => change({ name: name.trim() || 'My box' })}
        />
      </p>
      <p class="buttons">
        <button type="button" ref={keeping} onClick={() => save(false)}>
          keep it on this device
        </button>{' '}
        <button type="button" class="quiet" onClick={copyLink}>
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
      {asks.value && (
        <p class="buttons">
          <button
            type="button"
            onClick={() => {
              save(true);
              keeping.current?.focus();
            }}
          >
            replace the kept one
          </button>{' '}
          <button
            type="button"
            class="quiet"
            onClick={() => {
              asks.value = false;
              said.value = 'Nothing was replaced. Give this box another name to keep both.';
              document.getElementById(id)?.focus();
            }}
          >
            leave it
          </button>
        </p>
      )}
      {shown.value && <textarea readOnly rows={3} aria-label="link to this box" value={shown.value} />}
      <KeptDesigns onOpen={open} onCompare={onCompare} />
      {unreadable.value && (
        <p class="message">
          Some kept designs could not be read. What was found:{' '}
          <textarea readOnly rows={2} aria-label="what was found" value={unreadable.value} />
        </p>
      )}
    </section>
  );
}
