/** One step less, the field between, one step more; both go on while they are held. */
import type { ComponentChildren } from 'preact';
import { useRepeat } from './use-repeat.ts';

interface Props {
  /** Of the number, for the ear. */
  label: string;
  onStep: (by: 1 | -1) => void;
  children: ComponentChildren;
}

export function Stepper({ label, onStep, children }: Props) {
  const less = useRepeat(() => onStep(-1));
  const more = useRepeat(() => onStep(1));
  return (
    <div class="stepper">
      <button type="button" class="quiet" aria-label={`less: ${label}`} {...less}>
        <span aria-hidden="true">−</span>
      </button>
      {children}
      <button type="button" class="quiet" aria-label={`more: ${label}`} {...more}>
        <span aria-hidden="true">+</span>
      </button>
    </div>
  );
}
