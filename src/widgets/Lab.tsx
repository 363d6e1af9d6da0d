/**
 * A figure with its controls, one sentence on what it shows, and its results. A lesson names a lab; the lab is data.
 */
import type { ComponentChildren, FunctionComponent } from 'preact';
import type { Box } from '../box/box.ts';
import type { ChoiceName, NumberName } from '../box/fields.ts';
import type { ResultName, Values } from '../box/values.ts';
import { useStore } from '../notebook/use-store.ts';
import { Control } from './Control.tsx';
import { type Equations, ResultLine } from './Why.tsx';

export interface LabSpec {
  /** Heading above the figure. */
  readonly title: string;
  /** The figure: numbers in, SVG out. */
  readonly figure: FunctionComponent<{ values: Values }>;
  /** At most three inputs. */
  readonly controls: readonly (NumberName | ChoiceName)[];
  /** Further inputs, behind "more". */
  readonly more?: readonly (NumberName | ChoiceName)[];
  readonly results: readonly ResultName[];
  /** What the figure shows now, in a sentence. */
  readonly says: (values: Values) => ComponentChildren;
}

export interface LabProps {
  spec: LabSpec;
  equations: Equations;
  /** Inputs the lesson fixes for this figure. */
  pins?: Partial<Box>;
}

export function Lab({ spec, equations, pins }: LabProps) {
  const store = useStore(pins);
  const { figure: Figure } = spec;
  return (
    <section class="lab" aria-label={spec.title}>
      <h3>{spec.title}</h3>
      <div class="picture">
        <Figure values={store.values.value} />
        <p class="says">{spec.says(store.values.value)}</p>
      </div>
      <div class="controls">
        {spec.controls.map((name) => (
          <Control key={name} name={name} store={store} />
        ))}
        {spec.more && (
          <details class="more">
            <summary>more to change</summary>
            {spec.more.map((name) => (
              <Control key={name} name={name} store={store} />
            ))}
          </details>
        )}
        {pins && <Pinned store={store} />}
      </div>
      <div class="results">
        {spec.results.map((name) => (
          <ResultLine
            key={name}
            name={name}
            values={store.values}
            units={store.units}
            equations={equations}
          />
        ))}
      </div>
    </section>
  );
}

/** Says that the lesson fixed some values, and offers the two ways out. */
function Pinned({ store }: { store: ReturnType<typeof useStore> }) {
  return store.pinned.value ? (
    <p class="pinned">
      This figure starts from the lesson’s numbers.{' '}
      <button type="button" onClick={store.useMine}>
        use my box
      </button>{' '}
      <button type="button" onClick={store.putInMine}>
        put these in my box
      </button>
    </p>
  ) : (
    <p class="pinned">This figure shows your box.</p>
  );
}
