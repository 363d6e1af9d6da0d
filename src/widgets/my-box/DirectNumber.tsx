/** A number that is typed in directly, though the box keeps another in its place: what it changes is said below it. */
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import type { Kind, UnitSystem } from '../../units/index.ts';
import { HeardUnit, Unit } from '../kit/Unit.tsx';
import { useTypedNumber } from '../kit/use-typed-number.ts';

interface Props {
  label: string;
  kind: Kind;
  /** As it is now, in the stored unit of its kind. */
  value: number;
  low: number;
  high: number;
  digits?: 0 | 1 | 2;
  system: UnitSystem;
  /** Takes the number, or gives the words why it cannot be taken. */
  set: (value: number) => string | undefined;
  children?: ComponentChildren;
}

export function DirectNumber({ label, kind, value, low, high, digits, system, set, children }: Props) {
  const id = useId();
  const { input, message } = useTypedNumber({
    kind,
    low,
    high,
    value,
    system,
    set,
    ...(digits !== undefined && { digits }),
  });
  const described = [message && `${id}m`, children && `${id}h`].filter(Boolean).join(' ');
  return (
    <div class="control direct">
      <label for={id}>
        {label}
        <HeardUnit kind={kind} system={system} />
      </label>
      <input {...input} id={id} aria-describedby={described || undefined} />
      <Unit kind={kind} system={system} />
      {message && (
        <p class="message" id={`${id}m`} role="alert">
          {message}
        </p>
      )}
      {children && (
        <p class="help" id={`${id}h`}>
          {children}
        </p>
      )}
    </div>
  );
}
