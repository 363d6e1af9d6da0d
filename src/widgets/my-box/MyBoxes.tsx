/** Named designs on the device: keep this one, open, compare, delete and put back others. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Box } from '../../box/subjects/inputs.ts';
import { change, currentBox } from '../../notebook/current.ts';
import { loadDesigns, saveDesign, unreadable } from '../../notebook/designs.ts';
import { KeptDesigns } from './KeptDesigns.tsx';

interface Props {
  /** Leads to the field with the name. */
  onName: () => void;
  onCompare: (box: Box) => void;
}

export function MyBoxes({ onName, onCompare }: Props) {
  const said = useSignal('');
  /** A design of the same name is kept: replace it? */
  const asks = useSignal(false);
  useEffect(loadDesigns, []);
  /** Where the reader goes on once the question about a name is answered. */
  const keeping = useRef<HTMLButtonElement>(null);
  const box = currentBox.value;
  const save = (replace: boolean) => {
    const saved = saveDesign(box, replace);
    asks.value = !saved.ok && saved.why === 'same name';
    said.value = saved.ok ? `${box.name} is kept on this device.` : saved.message;
  };
  return (
    <>
      <p class="buttons">
        <button type="button" ref={keeping} onClick={() => save(false)}>
          keep it on this device
        </button>
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
              onName();
            }}
          >
            leave it
          </button>
        </p>
      )}
      <KeptDesigns
        onOpen={(chosen) => {
          change(chosen);
          said.value = `${chosen.name} is open.`;
        }}
        onCompare={onCompare}
      />
      {unreadable.value && (
        <p class="message">
          Some kept designs could not be read. What was found:{' '}
          <textarea readOnly rows={2} aria-label="what was found" value={unreadable.value} />
        </p>
      )}
    </>
  );
}
