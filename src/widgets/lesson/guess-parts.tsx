/** What both kinds of guess need: their properties, the figure in one or both systems, and the way back. */
import type { ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Model } from '../../box/subjects/model.ts';
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import type { Store } from '../kit/use-store.ts';
import { type GuessSpec, valuesOfGuess } from './guess-spec.ts';

export interface BarProps<Spec extends GuessSpec> {
  id: string;
  spec: Spec;
  model: Model;
  awake: boolean;
  open: boolean;
  /** What is kept of an earlier guess. */
  kept: string | undefined;
  /** Opened by this reader on this page just now, and not found open. */
  fresh: boolean;
  store: Pick<Store, 'units' | 'set'> & { values: ReadonlySignal<Values> };
  commit: (text: string) => void;
  cover: () => void;
}

/** Draws for the reader's system, or for both until the page knows which: the style sheet shows one. */
export function InSystem({
  bar: { awake, store, spec, model },
  children,
}: {
  bar: BarProps<GuessSpec>;
  children: (values: Values, system: UnitSystem) => ComponentChildren;
}) {
  if (awake) return <div class="guess-drawn">{children(store.values.value, store.units.value)}</div>;
  return (
    <>
      {(['mm', 'inch'] as const).map((system) => (
        <div key={system} class={`guess-drawn ${system}`}>
          {children(valuesOfGuess(spec, model, system), system)}
        </div>
      ))}
    </>
  );
}

/** The answer, to which the focus goes, and the way to cover it again. */
export function Answer({ children, cover }: { children: ComponentChildren; cover: () => void }) {
  return (
    <div class="guess-bar">
      <p class="guess-answer" tabIndex={-1} role="status">
        {children}
      </p>
      <button type="button" class="quiet" onClick={cover}>
        guess again
      </button>
    </div>
  );
}
