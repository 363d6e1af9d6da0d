/**
 * A text field for a number. What is being typed, or could not be used, stays in the field whatever moves elsewhere; the
 * last good value stays in force.
 */
import { useSignal } from '@preact/signals';
import type { InputHTMLAttributes } from 'preact';
import type { NumberField } from '../../box/core/field.ts';
import { shownRulers } from '../../figures/parts/my-ruler.ts';
import { format, toField, type UnitSystem } from '../../units/index.ts';
import { readNumber } from './read-number.ts';

interface Wanted extends Pick<NumberField, 'kind' | 'low' | 'high' | 'digits' | 'denominator' | 'as'> {
  /** In the stored unit of the kind, as its limits. */
  value: number;
  system: UnitSystem;
  /** Takes a number in range, or gives the words why it cannot be taken all the same. */
  set: (value: number) => string | undefined;
  /** Told when a number that was not taken is no longer wanted: other text stands in its place, or none. */
  forget?: () => void;
}

/**
 * Attributes for the `<input>`, why its text could not be used, a way to drop that text for the value in force, that value
 * as it would stand in the field, and a way to read at once what is being typed.
 */
export function useTypedNumber(wanted: Wanted) {
  const { kind, low, high, value, system, set, forget } = wanted;
  const typed = useSignal<string | undefined>(undefined);
  const refused = useSignal<{ text: string; message: string } | undefined>(undefined);
  const { digits, denominator } = wanted;
  const show = (number: number) => format(number, kind, { system, digits, denominator });
  const isFine = wanted.as === 'fine' || shownRulers.value[system].print.denominator === 100;
  const inForce = toField(value, kind, system, isFine);
  const read = async (text: string) => {
    const parsed = await readNumber(text, kind, system);
    if (typed.value === text) typed.value = undefined;
    forget?.();
    const message = !parsed.ok
      ? parsed.message
      : parsed.value < low || parsed.value > high
        ? `Write a value from ${show(low)} to ${show(high)}.`
        : set(parsed.value);
    refused.value = message ? { text, message } : undefined;
  };
  const drop = () => {
    typed.value = undefined;
    refused.value = undefined;
    forget?.();
  };
  return {
    message: refused.value?.message,
    drop,
    inForce,
    /** Reads what is being typed, if anything is; resolves when it has been taken or refused. */
    readNow: async () => {
      if (typed.value !== undefined) await read(typed.value);
      return refused.value === undefined;
    },
    input: {
      type: 'text',
      inputMode: 'decimal',
      autocomplete: 'off',
      value: typed.value ?? refused.value?.text ?? inForce,
      'aria-invalid': refused.value ? 'true' : undefined,
      onInput: ({ currentTarget }) => {
        typed.value = currentTarget.value;
      },
      onChange: ({ currentTarget }) => void read(currentTarget.value),
      onBlur: () => {
        // Typed and taken back: the browser tells of no change.
        if (typed.value === inForce) typed.value = undefined;
      },
      onKeyDown: ({ key, currentTarget }) => {
        if (key === 'Escape') drop();
        // The browser tells of no change, but what could not be fetched before may be there now.
        if (key === 'Enter' && currentTarget.value === refused.value?.text) void read(currentTarget.value);
      },
    } satisfies InputHTMLAttributes,
  };
}
