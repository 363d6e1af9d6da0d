/** On the notebook's page: everything the reader keeps as one file, back from a file, or erased. Each can be undone. */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { becomes, mergeNotebooks, type Notebook, notebookNow } from '../../notebook/everything/everything.ts';
import { readNotebook, writeNotebook } from '../../notebook/everything/file.ts';
import { useLead } from '../kit/use-lead.ts';
import { download } from '../my-box/download.ts';
import { Erasing } from './Erasing.tsx';
import { type Brought, Preview } from './Preview.tsx';

/** What stood here before the last change, and after it: it can be put back until the page is left. */
interface Before {
  readonly before: Notebook;
  readonly after: Notebook;
}

const refused = 'This device did not take all of it: its store is full or blocked. Nothing was changed.';
const sameAs = (one: Notebook, other: Notebook) =>
  JSON.stringify(Object.entries(one).sort()) === JSON.stringify(Object.entries(other).sort());

/** The reader's date, "2026-11-28". */
const dateToday = () => new Date().toLocaleDateString('sv-SE');

export function KeepAll() {
  const brought = useSignal<Brought | undefined>(undefined);
  const erasing = useSignal<Notebook | undefined>(undefined);
  const undoable = useSignal<Before | undefined>(undefined);
  const says = useSignal('');
  const here = useRef<HTMLElement>(null);
  const lead = useLead();
  const leadTo = (selector: string) => lead(() => here.current?.querySelector<HTMLElement>(selector));

  const open = async (file: File | undefined) => {
    if (!file) return;
    erasing.value = undefined;
    const read = readNotebook(await file.text());
    if (!read.ok) {
      brought.value = undefined;
      says.value = `${file.name}: ${read.message}`;
      return;
    }
    says.value = '';
    leadTo('.preview h3');
    brought.value = { name: file.name, ...read };
  };
  /** Makes a notebook the kept one. */
  const turnInto = (next: Notebook, done: string) => {
    const before = notebookNow();
    brought.value = undefined;
    erasing.value = undefined;
    if (!becomes(next)) {
      says.value = refused;
      return;
    }
    undoable.value = { before, after: notebookNow() };
    says.value = `${done} You can undo this until you leave the page.`;
    leadTo('.undo');
  };
  const undo = () => {
    const { before, after } = undoable.value!;
    const now = notebookNow();
    // What was written since, here or in another tab, stays beside it.
    if (!becomes(sameAs(now, after) ? before : mergeNotebooks(before, now).kept)) {
      says.value = refused;
      return;
    }
    undoable.value = undefined;
    says.value = 'Undone: all is as it was.';
    leadTo('.save-all');
  };
  return (
    <section class="keep-all" aria-labelledby="keep-all" ref={here}>
      <h2 id="keep-all">Take it along, bring it in, erase it</h2>
      <p>
        All of it is on this device alone. A file holds everything at once: boxes, notes, progress, answers,
        tries, cells and units.
      </p>
      <p class="buttons">
        <button
          type="button"
          class="save-all"
          onClick={() => {
            const date = dateToday();
            download(`my-notebook-${date}.json`, 'application/json', writeNotebook(notebookNow(), date));
            says.value = 'The file is handed to your browser, which says where it puts it.';
          }}
        >
          save everything as a file
        </button>{' '}
        <label class="file">
          bring in a file{' '}
          <input
            type="file"
            accept=".json,application/json"
            onChange={({ currentTarget }) => {
              void open(currentTarget.files?.[0]);
              currentTarget.value = '';
            }}
          />
        </label>{' '}
        <button
          type="button"
          class="quiet erase"
          onClick={() => {
            brought.value = undefined;
            says.value = '';
            erasing.value = notebookNow();
            leadTo('.erasing h3');
          }}
        >
          erase everything
        </button>
      </p>
      {brought.value && (
        <Preview
          brought={brought.value}
          now={notebookNow()}
          onBring={turnInto}
          onLeave={() => {
            brought.value = undefined;
            leadTo('.save-all');
          }}
        />
      )}
      {erasing.value && (
        <Erasing
          now={erasing.value}
          onErase={() => turnInto({}, 'Everything is erased.')}
          onLeave={() => {
            erasing.value = undefined;
            leadTo('.erase');
          }}
        />
      )}
      <p role="status">{says.value}</p>
      {undoable.value && (
        <p>
          <button type="button" class="undo" onClick={undo}>
            undo
          </button>
        </p>
      )}
    </section>
  );
}
