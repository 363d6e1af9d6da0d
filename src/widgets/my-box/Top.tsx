/**
 * The top of the bench: the name of the box, and what can be done with the whole of it. On a phone all but the build
 * sheet stands behind “more”.
 */
import { type Signal, useSignal } from '@preact/signals';
import { isExample } from '../../box/subjects/example.ts';
import { fields } from '../../box/subjects/inputs.ts';
import { change, currentBox, redo, undo } from '../../notebook/current.ts';
import { canRedo, canUndo, lastStep } from '../../notebook/history.ts';
import { isSaving } from '../../notebook/storage.ts';
import { href } from '../kit/href.ts';
import { TextInput } from '../kit/TextInput.tsx';
import type { Store } from '../kit/use-store.ts';

/** What opens below the top. */
export type Drawer = 'new box' | 'my boxes' | 'share';

interface Props {
  store: Store;
  open: Signal<Drawer | undefined>;
  /** Id of what opens. */
  drawer: string;
  /** Id of the field with the name. */
  nameId: string;
}

/** "undo: wall thickness": what one step back takes back. */
function undoes(): string {
  const [first, ...others] = lastStep.value;
  if (!first) return 'undo';
  return `undo: ${fields[first].label}${others.length > 0 ? ` and ${others.length} more` : ''}`;
}

export function Top({ store, open, drawer, nameId: id }: Props) {
  const all = useSignal(false);
  const { name } = store.values.value;
  const toggle = (which: Drawer) => (
    <button
      type="button"
      class="quiet"
      aria-expanded={open.value === which}
      aria-controls={drawer}
      onClick={() => {
        open.value = open.value === which ? undefined : which;
      }}
    >
      {which}
    </button>
  );
  return (
    <div class="bench-top">
      <h1>
        <span class="without-script">{name}</span>
        <label class="heard" for={id}>
          name of this box
        </label>
        <TextInput
          id={id}
          maxLength={60}
          value={name}
          set={(text) => change({ name: text.trim() || 'My box' })}
        />
      </h1>
      <p class="kept-here">
        {!isSaving.value
          ? 'not kept on this device'
          : isExample(currentBox.value)
            ? 'the example, until you change it'
            : 'kept on this device'}
      </p>
      <p class="buttons">
        <button
          type="button"
          class="quiet more-actions"
          aria-expanded={all.value}
          onClick={() => {
            all.value = !all.value;
          }}
        >
          more
        </button>
        <span class={`whole-box ${all.value ? 'open' : ''}`}>
          <button type="button" class="quiet undo" aria-disabled={!canUndo.value} onClick={undo}>
            {undoes()}
          </button>
          <button type="button" class="quiet" aria-disabled={!canRedo.value} onClick={redo}>
            redo
          </button>
          {toggle('new box')}
          {toggle('my boxes')}
          {toggle('share')}
          <a class="button quiet" href={href('templates/')}>
            templates
          </a>
        </span>
        <a class="button" href={href('build-sheet/')}>
          <span>
            <span class="wide-only">build </span>sheet
          </span>
        </a>
      </p>
    </div>
  );
}
