/**
 * The field of an expression: a combobox whose list completes names. Arrows go through the list, Enter or a press takes
 * one, Escape closes it; with no name marked, Enter works the cell out. Half typed text stays, whatever is drawn around it.
 * Over 150 lines, because the field, its keys and its list make one pattern.
 */
import { useSignal } from '@preact/signals';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { longestText } from '../../notebook/scratch/tidy.ts';
import { type Offer, offersFor, openCall, wordAt } from './complete.ts';
import { afterPress } from './use-scratch.ts';

interface Props {
  id: string;
  label: string;
  /** Of what its result says, for who hears. */
  describedBy: string;
  value: string;
  wrong: boolean;
  offers: readonly Offer[];
  placeholder?: string;
  /** Takes the text once it is written. */
  set: (text: string) => void;
  /** Told of every letter. */
  draft: (text: string) => void;
  /** With the first touch. */
  use: () => void;
  /** After Enter has taken the text. */
  enter: () => void;
  /** What is told of a function while its parenthesis is open. */
  hint: (name: string) => string | undefined;
}

export function SumField({
  id,
  label,
  describedBy,
  value,
  wrong,
  offers,
  placeholder,
  set,
  draft,
  use,
  enter,
  hint,
}: Props) {
  const list = useId();
  const field = useRef<HTMLInputElement>(null);
  const typed = useSignal<string | undefined>(undefined);
  const caret = useSignal(0);
  const open = useSignal(false);
  const marked = useSignal(-1);
  /** Where the caret goes when the text has been drawn. */
  const goTo = useRef<number>();

  const text = typed.value ?? value;
  const { from, word } = wordAt(text, caret.value);
  const found = open.value ? offersFor(word, offers) : [];
  const name = open.value ? openCall(text, caret.value) : undefined;
  const told = name && hint(name);

  useLayoutEffect(() => {
    if (goTo.current === undefined) return;
    field.current?.setSelectionRange(goTo.current, goTo.current);
    goTo.current = undefined;
  });

  const see = () => {
    caret.value = field.current?.selectionStart ?? text.length;
  };
  const take = (offer: Offer) => {
    const behind = text.slice(caret.value).replace(/^[\p{L}\p{N}_.]+/u, '');
    // A parenthesis that is there already is not opened twice.
    const put = behind.startsWith('(') ? offer.text.replace(/\($/, '') : offer.text;
    typed.value = text.slice(0, from) + put + behind;
    draft(typed.value);
    caret.value = from + put.length;
    goTo.current = caret.value;
    marked.value = -1;
    open.value = offer.text.endsWith('(');
    field.current?.focus();
  };
  const commit = () => {
    if (typed.value !== undefined && typed.value !== value) set(typed.value);
    typed.value = undefined;
  };

  const onKeyDown = (event: KeyboardEvent) => {
    const { key } = event;
    const move = (to: number) => {
      event.preventDefault();
      marked.value = to;
    };
    if (found.length > 0 && key === 'ArrowDown') move((marked.value + 1) % found.length);
    else if (found.length > 0 && key === 'ArrowUp')
      move(marked.value <= 0 ? found.length - 1 : marked.value - 1);
    else if (key === 'Escape' && (found.length > 0 || told)) {
      event.preventDefault();
      open.value = false;
      marked.value = -1;
    } else if (key === 'Enter') {
      event.preventDefault();
      const offer = found[marked.value];
      if (offer) return take(offer);
      open.value = false;
      commit();
      enter();
    }
  };

  return (
    <div class="sum-field">
      <input
        id={id}
        ref={field}
        type="text"
        role="combobox"
        aria-label={label}
        aria-expanded={found.length > 0}
        aria-controls={list}
        aria-autocomplete="list"
        aria-activedescendant={found[marked.value] ? `${list}-${marked.value}` : undefined}
        aria-describedby={describedBy}
        aria-invalid={wrong ? 'true' : undefined}
        autocomplete="off"
        autocapitalize="off"
        autocorrect="off"
        spellcheck={false}
        enterkeyhint="done"
        maxLength={longestText}
        placeholder={placeholder}
        value={text}
        onFocus={use}
        onInput={({ currentTarget }) => {
          typed.value = currentTarget.value;
          draft(currentTarget.value);
          open.value = true;
          marked.value = -1;
          see();
        }}
        onKeyUp={see}
        onClick={see}
        onChange={() => {
          // While a name is taken from the list by touch the text is not done.
          if (document.activeElement !== field.current) commit();
        }}
        onBlur={() => {
          commit();
          marked.value = -1;
          setTimeout(() => {
            if (document.activeElement !== field.current) open.value = false;
          }, afterPress);
        }}
        onKeyDown={onKeyDown}
      />
      {told && found.length === 0 && <p class="call-hint">{told}</p>}
      <div role="listbox" id={list} aria-label="names" hidden={found.length === 0}>
        {found.map((offer, at) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field has the keys
          // biome-ignore lint/a11y/useFocusableInteractive: the field has the focus, by the pattern of a combobox
          <div
            key={offer.text}
            role="option"
            id={`${list}-${at}`}
            aria-selected={at === marked.value}
            // The field keeps the focus.
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => take(offer)}
          >
            <b>{offer.name}</b> <span>{offer.meaning}</span>
          </div>
        ))}
      </div>
      <p role="status" class="heard">
        {found.length > 0 ? `${found.length} names` : ''}
      </p>
    </div>
  );
}
