/** Shows a note's field: fetched with the first note. */
import { render } from 'preact';
import { NoteField } from './NoteField.tsx';

/** @param asked the reader pressed the button, and goes on in the field */
export function showNote(room: HTMLElement, asked: boolean): void {
  const about = room.querySelector('.heard')!.textContent.replace(/^ ?on: /, '');
  room.replaceChildren();
  render(<NoteField place={room.dataset.note!} about={about} />, room);
  if (asked) room.querySelector('textarea')!.focus();
}
