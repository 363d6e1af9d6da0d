/** A note as it is written, and as it is printed. */
import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import { loadNotes, longestNote, notes, setNote } from '../../notebook/notes.ts';

export interface Props {
  /** See `Notes`. */
  place: string;
  /** What it is about, for the ear. */
  about: string;
}

export function NoteField({ place, about }: Props) {
  loadNotes();
  const id = useId();
  const kept = notes.value[place] ?? '';
  /** As typed: a blank line at its end is no change of the note, and stays. */
  const draft = useSignal(kept);
  const says = useSignal('');
  useEffect(() => {
    if (kept !== draft.peek() && (kept !== '' || draft.peek().trim() !== '')) draft.value = kept;
  }, [kept]);
  return (
    <div class="note-field">
      <label for={id}>
        My note<span class="heard"> on: {about}</span>
      </label>
      <textarea
        id={id}
        rows={3}
        maxLength={longestNote}
        value={draft.value}
        onInput={({ currentTarget }) => {
          draft.value = currentTarget.value;
          says.value = setNote(place, currentTarget.value)
            ? 'Kept on this device.'
            : 'This device keeps nothing: the note goes when you leave this page.';
        }}
      />
      {draft.value.trim() !== '' && <p class="note-on-paper">{draft.value}</p>}
      <p role="status" class="help">
        {says.value}
      </p>
    </div>
  );
}
