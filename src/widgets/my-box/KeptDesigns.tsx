/** The designs kept on the device: open, compare, delete; the one deleted last can be put back. */
import type { Box } from '../../box/box.ts';
import { deleteDesign, deleted, designs, undelete } from '../../notebook/designs.ts';

interface Props {
  onOpen: (box: Box) => void;
  onCompare: (box: Box) => void;
}

export function KeptDesigns({ onOpen, onCompare }: Props) {
  return (
    <>
      {deleted.value && (
        <p>
          {deleted.value.name} is deleted.{' '}
          <button type="button" class="quiet" onClick={undelete}>
            put it back
          </button>
        </p>
      )}
      {designs.value.length > 0 && (
        <ul class="kept">
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
                onClick={() => deleteDesign(design.name)}
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
