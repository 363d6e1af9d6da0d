/** On the notebook's page: every note with its place, to be read, written on and printed. */
import { useSignal, useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { loadNotes, notes } from '../../notebook/learning/notes.ts';
import { NoteField } from '../beside/NoteField.tsx';
import { fetchWords } from '../beside/words.ts';
import { href } from '../kit/href.ts';
import { useFetched } from './use-fetched.ts';

/** "lessons/a#b" as an address of the site. */
const addressOf = (place: string) => {
  const [page, step] = place.split('#');
  return href(`${page}/${step ? `#${step}` : ''}`);
};

export function AllNotes({ file }: { file: string }) {
  /** A note that is emptied stays while the reader is in it, so that it can be written anew. */
  const listed = useSignal<readonly string[]>([]);
  useEffect(loadNotes, []);
  useSignalEffect(() => {
    const at = document.activeElement?.closest<HTMLElement>('[data-place]')?.dataset.place;
    const places = new Set([...listed.peek(), ...Object.keys(notes.value)]);
    listed.value = [...places].filter((place) => notes.value[place] !== undefined || place === at);
  });
  const { found } = useFetched(() => fetchWords(file), listed.value.length > 0);
  const names = typeof found === 'object' ? found.places : {};
  const order = Object.keys(names);
  const rank = (place: string) => (order.includes(place) ? order.indexOf(place) : order.length);
  const inOrder = [...listed.value].sort((one, other) => rank(one) - rank(other));
  return (
    <section class="all-notes" aria-labelledby="all-notes">
      <h2 id="all-notes">My notes</h2>
      {inOrder.length === 0 && (
        <p>None yet. The button “my note” stands below each step of a lesson and below each rule.</p>
      )}
      {inOrder.map((place) => (
        <div key={place} class="my-note" data-place={place}>
          <h3>
            <a href={addressOf(place)}>{names[place] ?? place}</a>
          </h3>
          <NoteField place={place} about={names[place] ?? place} />
        </div>
      ))}
      {inOrder.length > 0 && (
        <p>
          <button type="button" class="quiet" onClick={() => print()}>
            print this page
          </button>
        </p>
      )}
    </section>
  );
}
