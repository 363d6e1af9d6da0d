/** "my note" beside a step or a rule: a quiet button, or the note where there is one. What writes it is fetched then. */
import { useSignal, useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { loadNotes, notes } from '../../notebook/notes.ts';
import type { Props } from './NoteField.tsx';
import { useFetched } from './use-fetched.ts';

export default function NoteHere({ place, about }: Props) {
  const pressed = useSignal(false);
  /** Stays, so that a note that is emptied can be written anew. */
  const wanted = useSignal(false);
  const { found, ask } = useFetched(() => import('./NoteField.tsx'), wanted.value);
  const field = typeof found === 'object' ? found : undefined;
  useSignalEffect(() => {
    if (notes.value[place] !== undefined) wanted.value = true;
  });
  useEffect(loadNotes, []);
  useEffect(() => {
    if (field && pressed.peek()) document.getElementById(`note-${place}`)?.querySelector('textarea')?.focus();
  }, [field]);
  return (
    <div class="my-note" id={`note-${place}`}>
      {field ? (
        <field.NoteField place={place} about={about} />
      ) : (
        <>
          <button
            type="button"
            class="quiet"
            onClick={() => {
              pressed.value = true;
              if (wanted.peek()) ask();
              wanted.value = true;
            }}
          >
            my note<span class="heard"> on: {about}</span>
          </button>
          <p role="status">
            {found === 'missing'
              ? 'What writes notes could not be fetched. Press again when there is a network; what you wrote before is still kept.'
              : ''}
          </p>
        </>
      )}
    </div>
  );
}
