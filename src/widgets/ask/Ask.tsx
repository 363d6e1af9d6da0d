/**
 * The way to ask, in the frame of every page: a door that looks like a field, and what it opens. What finds and shows the
 * answers is fetched with the first question.
 */
import { useSignal } from '@preact/signals';
import type { ComponentChildren, FunctionComponent } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { ask, isAsking, question } from '../kit/ask.ts';
import { href } from '../kit/href.ts';
import type { AnswersProps } from './Answers.tsx';

type Late = { readonly Answers: FunctionComponent<AnswersProps> } & Omit<AnswersProps, 'question'>;

/** Everything that comes with the first question; the page says where its words are, so that they are those of its version. */
async function fetchLate(): Promise<Late> {
  const [{ Answers, prepare }, answer] = await Promise.all([
    import('./Answers.tsx'),
    fetch(document.documentElement.dataset.answers!),
  ]);
  const file = await answer.json();
  return { Answers, file, search: await prepare(file) };
}

/** Whether a key belongs to what is being typed. */
const isTyping = (target: EventTarget | null) =>
  target instanceof HTMLElement &&
  (target.isContentEditable || /^(INPUT|SELECT|TEXTAREA)$/.test(target.tagName));

/** @param children the door in the header; others may stand anywhere, see `prose/AskDoor.astro` */
export default function Ask({ children }: { children?: ComponentChildren }) {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const live = useSignal(false);
  const late = useSignal<Late | 'missing' | undefined>(undefined);
  const get = () => {
    if (typeof late.value === 'object') return;
    late.value = undefined;
    fetchLate().then(
      (found) => {
        late.value = found;
      },
      () => {
        late.value = 'missing';
      },
    );
  };
  useEffect(() => {
    live.value = true;
    const slash = (event: KeyboardEvent) => {
      if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target))
        return;
      if (document.querySelector('dialog[open]')) return;
      event.preventDefault();
      ask();
    };
    const press = ({ target }: MouseEvent) => {
      if (!(target instanceof Element)) return;
      const door = target.closest<HTMLElement>('[data-ask]');
      if (door) ask(door.dataset.ask || undefined);
      // Beside it, or a way to another place, which may be on this page.
      else if (target === dialog.current || (target.closest('a') && dialog.current?.contains(target)))
        dialog.current?.close();
    };
    addEventListener('keydown', slash);
    addEventListener('click', press);
    const stop = isAsking.subscribe((open) => {
      if (!open || dialog.current?.open) return;
      dialog.current?.showModal();
      field.current?.select();
      get();
    });
    return () => {
      removeEventListener('keydown', slash);
      removeEventListener('click', press);
      stop();
    };
  }, []);
  return (
    <>
      {children}
      {live.value && (
        <dialog
          class="ask"
          ref={dialog}
          aria-label="Ask"
          onClose={() => {
            isAsking.value = false;
          }}
        >
          <form
            onSubmit={(event) => {
              event.preventDefault();
              if (late.value === 'missing') get();
            }}
          >
            <label for={id}>Ask</label>
            <input
              id={id}
              ref={field}
              type="text"
              enterkeyhint="search"
              autocomplete="off"
              spellcheck={false}
              value={question.value}
              onInput={({ currentTarget }) => {
                question.value = currentTarget.value;
              }}
            />
            <button type="button" class="quiet" onClick={() => dialog.current?.close()}>
              close
            </button>
          </form>
          {!isAsking.value ? null : typeof late.value === 'object' ? (
            <late.value.Answers question={question.value} file={late.value.file} search={late.value.search} />
          ) : (
            <p role="status">
              {late.value === 'missing' ? (
                <>
                  The answers could not be fetched. Press Enter when there is a network, or look{' '}
                  <a href={href('a-z/')}>from A to Z</a>.
                </>
              ) : (
                'One moment …'
              )}
            </p>
          )}
        </dialog>
      )}
    </>
  );
}
