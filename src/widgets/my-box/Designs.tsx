/** Named designs on the device, steps back and forward, links and files. */
import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import type { Box } from '../../box/box.ts';
import { exampleBox } from '../../box/box.ts';
import { change, currentBox, linkToBox, redo, undo } from '../../notebook/current.ts';
import { deleteDesign, designs, saveDesign, unreadable, wakeDesigns } from '../../notebook/designs.ts';
import { fileNameOf, readFile, writeFile } from '../../notebook/files.ts';
import { canRedo, canUndo } from '../../notebook/history.ts';
import { download } from './download.ts';

export function Designs({ onCompare }: { onCompare: (box: Box | undefined) => void }) {
  const id = useId();
  const said = useSignal('');
  useEffect(wakeDesigns, []);
  const box = currentBox.value;
  const open = (chosen: Box) => {
    change(chosen);
    said.value = `${chosen.name} is open.`;
  };
  const copyLink = async () => {
    const link = linkToBox(location.href);
    try {
      await navigator.clipboard.writeText(link);
      said.value = 'The link is copied. It holds the whole box.';
    } catch {
      location.hash = link.split('#')[1] ?? '';
      said.value = 'The link stands in the address line now. It holds the whole box.';
    }
  };
  const openFile = async (file: File | undefined) => {
    if (!file) return;
    const decoded = await readFile(file);
    if (decoded.ok) open(decoded.box);
    else said.value = `${file.name}: ${decoded.message} Your box is as it was.`;
  };
  return (
    <section class="designs" aria-label="Designs and files">
      <h2>Designs and files</h2>
      <p class="buttons">
        <button type="button" class="quiet" disabled={!canUndo.value} onClick={undo}>
          one step back
        </button>{' '}
        <button type="button" class="quiet" disabled={!canRedo.value} onClick={redo}>
          forward again
        </button>{' '}
        <button type="button" class="quiet" onClick={() => open(exampleBox)}>
          start from the example
        </button>
      </p>
      <p>
        <label for={id}>name of this box</label>{' '}
        <input
          id={id}
          type="text"
          maxLength={60}
          value={box.name}
          onChange={(event) => change({ name: event.currentTarget.value.trim() || 'My box' })}
        />
      </p>
      <p class="buttons">
        <button
          type="button"
          onClick={() => {
            said.value = saveDesign(box) ?? `${box.name} is kept on this device.`;
          }}
        >
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
      {designs.value.length > 0 && (
        <ul class="kept">
          {designs.value.map((design) => (
            <li key={design.name}>
              {design.name}{' '}
              <button type="button" class="quiet" onClick={() => open(design.box)}>
                open
              </button>{' '}
              <button type="button" class="quiet" onClick={() => onCompare(design.box)}>
                compare with mine
              </button>{' '}
              <button
                type="button"
                class="quiet"
                onClick={() => deleteDesign(design.name)}
                aria-label={`delete ${design.name}`}
              >
                delete
              </button>
            </li>
          ))}
        </ul>
      )}
      {unreadable.value && (
        <p class="message">
          Some kept designs could not be read. What was found:{' '}
          <textarea readOnly rows={2} aria-label="what was found" value={unreadable.value} />
        </p>
      )}
    </section>
  );
}
