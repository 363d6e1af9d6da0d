/**
 * Wakes what stands of the reader's notebook beside a lesson or a rule: the fold with questions, and the buttons "my note". It
 * is no island, since every lesson has seven of them and most readers pass by: the page holds them as they are without a
 * script, and what they need is fetched with the first use.
 */
import { load, onOtherTab } from '../../notebook/storage.ts';

const missing = 'could not be fetched. Try again when there is a network.';

/** Puts a note's field in the place of its button. @param asked whether the reader wants to write */
async function openNote(room: HTMLElement, asked: boolean): Promise<void> {
  if (room.dataset.open) return;
  room.dataset.open = 'yes';
  try {
    const { showNote } = await import('./late-note.tsx');
    showNote(room, asked);
  } catch {
    delete room.dataset.open;
    let says = room.querySelector('p');
    if (!says) {
      says = document.createElement('p');
      says.role = 'alert';
      room.append(says);
    }
    says.textContent = `What writes notes ${missing}`;
  }
}

/** Puts the reader's own questions in the place of those built into the page. */
async function openRecall(fold: HTMLDetailsElement): Promise<void> {
  if (!fold.open || fold.dataset.state) return;
  fold.dataset.state = 'asked';
  const says = fold.querySelector('[role=status]')!;
  says.textContent = 'One moment …';
  try {
    const [{ askBefore }, answer] = await Promise.all([
      import('./late-recall.tsx'),
      fetch(fold.dataset.file!),
    ]);
    askBefore(fold, (await answer.json()).questions);
    fold.dataset.state = 'own';
    says.textContent = '';
  } catch {
    delete fold.dataset.state;
    says.textContent = `Your own questions ${missing} These are the same for everybody, and nothing is kept of them.`;
  }
}

export function wakeNotebook(): void {
  const rooms = [...document.querySelectorAll<HTMLElement>('[data-note]')];
  for (const room of rooms) room.querySelector('button')!.onclick = () => openNote(room, true);
  const showKept = (text = '') => {
    for (const room of rooms) if (text.includes(`"${room.dataset.note}":`)) openNote(room, false);
  };
  showKept(load('notes'));
  onOtherTab('notes', showKept);
  document.documentElement.dataset.notes = 'awake';
  const fold = document.querySelector<HTMLDetailsElement>('details.recalls');
  if (!fold) return;
  fold.ontoggle = () => openRecall(fold);
  openRecall(fold);
}
