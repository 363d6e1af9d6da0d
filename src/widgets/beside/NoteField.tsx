/** A note as it is written, and as it is printed. */
import { useSignal, useSignalEffect } from '@preact/signals';
import { useId, useRef } from 'preact/hooks';
import { loadNotes, longestNote, notes, setNote } from '../../notebook/learning/notes.ts';

export interface Props {
  /** See `Notes`. */
  place: string;
  /** What it is about, for the ear. */
  about: string;
}

export function NoteField({ place, about }: Props) {
  loadNotes();
  const id = useId();
  /** What this field has kept or taken over last: only another text comes from elsewhere, and not the echo of fast typing. */
  const own = useRef(notes.peek()[place] ?? '');
  const draft = useSignal(own.current);
  const says = useSignal('');
  useSignalEffect(() => {
    const kept = notes.value[place] ?? '';
    if (kept === own.current) return;
    own.current = kept;
    draft.value = kept;
  });
  const write = (text: string) => {
    draft.value = text;
    own.current = text.trim() === '' ? '' : text;
    says.value = setNote(place, text)
      ? 'Kept on this device.'
      : 'This device keeps nothing: the note goes when you leave this page.';
  };
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
        onInput={({ currentTarget }) => write(currentTarget.value)}
      />
      {draft.value.trim() !== '' && <p class="note-on-paper">{draft.value}</p>}
      <p role="status" class="help">
        {says.value}
      </p>
    </div>
  );
}
