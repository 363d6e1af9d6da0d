/** A field of an entry that is being written: its text is read when the entry is kept, and stays where it cannot be. */
import { type Signal, useSignal } from '@preact/signals';
import { useId, useRef } from 'preact/hooks';
import { format, type Kind, type UnitSystem } from '../../../units/index.ts';
import { readNumber } from '../../kit/read-number.ts';
import { HeardUnit, Unit } from '../../kit/Unit.tsx';

export interface Draft {
  readonly text: Signal<string>;
  readonly message: Signal<string | undefined>;
  readonly field: { current: HTMLInputElement | null };
}

export const useDraft = (): Draft => ({
  text: useSignal(''),
  message: useSignal<string | undefined>(undefined),
  field: useRef<HTMLInputElement>(null),
});

interface EntryFieldProps {
  label: string;
  draft: Draft;
  /** Without it the field is for words or, with `type`, for a day. */
  kind?: Kind;
  system?: UnitSystem;
  type?: 'text' | 'date';
  /** Names that were written before. */
  names?: readonly string[];
  help?: string;
}

export function EntryField({ label, draft, kind, system, type = 'text', names, help }: EntryFieldProps) {
  const id = useId();
  const message = draft.message.value;
  return (
    <div class="entry">
      <label for={id}>
        {label} {kind && <HeardUnit kind={kind} system={system} />}
      </label>
      <span class="entry-value">
        <input
          id={id}
          ref={draft.field}
          type={type}
          inputMode={kind && 'decimal'}
          autocomplete="off"
          maxLength={60}
          list={names?.length ? `${id}n` : undefined}
          value={draft.text.value}
          aria-invalid={message ? 'true' : undefined}
          aria-describedby={message || help ? `${id}m` : undefined}
          onInput={({ currentTarget }) => {
            draft.text.value = currentTarget.value;
          }}
        />
        {kind && <Unit kind={kind} system={system} />}
      </span>
      {names && names.length > 0 && (
        <datalist id={`${id}n`}>
          {names.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      )}
      {(message || help) && (
        <p id={`${id}m`} class={message ? 'message' : 'help'}>
          {message ?? help}
        </p>
      )}
    </div>
  );
}

/** What a number must be: its kind, its limits in stored units, and whether it may be left out. */
interface Wanted {
  readonly kind: Kind;
  readonly within: readonly [low: number, high: number];
  readonly optional?: boolean;
}

/** Reads a draft. @returns undefined where it is empty and may be, or where it cannot be used: then its message says why */
export async function readDraft(
  draft: Draft,
  { kind, within: [low, high], optional }: Wanted,
  system: UnitSystem,
): Promise<number | undefined> {
  draft.message.value = undefined;
  if (draft.text.value.trim() === '') {
    if (!optional) draft.message.value = 'Write a number here.';
    return undefined;
  }
  const parsed = await readNumber(draft.text.value, kind, system);
  if (!parsed.ok) draft.message.value = parsed.message;
  else if (parsed.value >= low && parsed.value <= high) return parsed.value;
  else
    draft.message.value = `Write a value from ${format(low, kind, { system })} to ${format(high, kind, { system })}.`;
  return undefined;
}

/** Brings the hand to the first draft that has a message. @returns whether there is one */
export function leadToFault(drafts: readonly Draft[]): boolean {
  const bad = drafts.find(({ message }) => message.value !== undefined);
  bad?.field.current?.focus();
  return bad !== undefined;
}
