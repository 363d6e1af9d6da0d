/** The designs kept on the device: open, compare, delete; the one deleted last can be put back. */

import { useRef } from 'preact/hooks';
import type { Box } from '../../box/subjects/inputs.ts';
import { deleteDesign, deleted, designs, undelete } from '../../notebook/designs.ts';
import { useLead } from '../kit/use-lead.ts';

interface Props {
  onOpen: (box: Box) => void;
  onCompare: (box: Box) => void;
}

export function KeptDesigns({ onOpen, onCompare }: Props) {
  const lead = useLead();
  const backButton = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLUListElement>(null);
  return (
    <>
      {deleted.value && (
        <p>
          {deleted.value.name} is deleted.{' '}
          <button
            type="button"
            class="quiet"
            ref={backButton}
            onClick={() => {
              // What is put back stands last.
              lead(() => list.current?.lastElementChild?.querySelector('button'));
              undelete();
            }}
          >
            put it back
          </button>
        </p>
      )}
      {designs.value.length > 0 && (
        <ul class="kept" ref={list}>
          {designs.value.map((design) => (
            <li key={design.name}>
              {design.name}{' '}
              <button type="button" class="quiet" onClick={() => onOpen(design.box)}>
                open
              </button>{' '}
              <button type="button" class="quiet" onClick={() => onCompare(design.box)}>
                compare with mine
              </button>{' '}
              <button
                type="button"
                class="quiet"
                onClick={() => {
                  lead(() => backButton.current);
                  deleteDesign(design.name);
                }}
                aria-label={`delete ${design.name}`}
              >
                delete
              </button>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
