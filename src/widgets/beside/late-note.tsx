/** Shows a note's field: fetched with the first note. */
import { render } from 'preact';
import { NoteField } from './NoteField.tsx';

/** @param asked the reader pressed the button, and goes on in the field */
export function showNote(room: HTMLElement, asked: boolean): void {
  const { note, about } = room.dataset;
  room.replaceChildren();
  render(<NoteField place={note!} about={about!} />, room);
  if (asked) room.querySelector('textarea')!.focus();
}
