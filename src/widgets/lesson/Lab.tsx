/**
 * A figure with its controls, one sentence on what it shows, and its results. A lesson names a lab; the lab is data.
 */
import type { ComponentChildren, FunctionComponent, RefObject } from 'preact';
import { useRef } from 'preact/hooks';
import type { ResultName, Values } from '../../box/subjects/index.ts';
import type { Box, ChoiceName, NumberName } from '../../box/subjects/inputs.ts';
import { isInForce } from '../../box/subjects/inputs.ts';
import type { Model } from '../../box/subjects/model.ts';
import type { Card } from '../../calc/core/relation.ts';
import { Control } from '../kit/Control.tsx';
import { ResultLine } from '../kit/ResultLine.tsx';
import { useStore } from '../kit/use-store.ts';

export interface LabSpec {
  /** Heading above the figure. */
  readonly title: string;
  /** The figure: numbers in, SVG out. */
  readonly figure: FunctionComponent<{ values: Values }>;
  /** At most three inputs; of those that give the size, only the ones in force are shown. */
  readonly controls: readonly (NumberName | ChoiceName)[];
  /** Further inputs, behind "more". */
  readonly more?: readonly (NumberName | ChoiceName)[];
  readonly results: readonly ResultName[];
  /** What the figure shows now, in a sentence. */
  readonly says: (values: Values) => ComponentChildren;
}

/** A lab whose figure has numbers of its own beside those of the box, and so draws itself in a `LabFrame`. */
export interface OwnLabSpec {
  /** Relations behind its numbers: their equations come with the page. */
  readonly relations: readonly Card[];
  readonly own: FunctionComponent;
}

export interface LabProps {
  spec: LabSpec;
  model: Model;
  /** Inputs the lesson fixes for this figure. */
  pins?: Partial<Box>;
}

export function Lab({ spec, model, pins }: LabProps) {
  const store = useStore(model, pins);
  const { figure: Figure } = spec;
  /** A slider that moves nothing is not shown. */
  const acts = (name: keyof Box) => isInForce(name, store.values.value);
  /** Nor a number that this box does not have. */
  const has = (name: ResultName) => model.results[name]?.when?.(store.values.value) ?? true;
  return (
    <LabFrame
      within={store.ref}
      title={spec.title}
      picture={
        <>
          <Figure values={store.values.value} />
          <p class="says">{spec.says(store.values.value)}</p>
        </>
      }
      controls={
        <>
          {spec.controls.filter(acts).map((name) => (
            <Control key={name} name={name} store={store} />
          ))}
          {spec.more && (
            <details class="more">
              <summary>more to change</summary>
              {spec.more.filter(acts).map((name) => (
                <Control key={name} name={name} store={store} />
              ))}
            </details>
          )}
          {pins && <Pinned store={store} />}
        </>
      }
      results={spec.results
        .filter(has)
        .map((name) => (
          <ResultLine key={name} model={model} name={name} values={store.values} units={store.units} />
        ))}
    />
  );
}

interface FrameProps {
  /** The store's `ref`, for a lab that follows the box. */
  within?: RefObject<HTMLElement>;
  title: string;
  /** Figure and sentence; what moves it; what follows. */
  picture: ComponentChildren;
  controls: ComponentChildren;
  results: ComponentChildren;
}

/** How every lab is laid out. */
export function LabFrame({ within, title, picture, controls, results }: FrameProps) {
  return (
    <section class="lab" aria-label={title} ref={within}>
      <h2 class="step">{title}</h2>
      <div class="picture">{picture}</div>
      <div class="controls">{controls}</div>
      <div class="results">{results}</div>
    </section>
  );
}

/** Says that the lesson fixed some values, and offers the two ways out. */
function Pinned({ store }: { store: ReturnType<typeof useStore> }) {
  /** Both buttons go once one is pressed: what then stands in their place is read next. */
  const line = useRef<HTMLParagraphElement>(null);
  const press = (act: () => void) => () => {
    act();
    line.current?.focus();
  };
  return store.pinned.value ? (
    <p class="pinned" tabIndex={-1} ref={line}>
      This figure starts from the lesson’s numbers.{' '}
      <button type="button" onClick={press(store.useMine)}>
        use my box
      </button>{' '}
      <button type="button" onClick={press(store.putInMine)}>
        put these in my box
      </button>
    </p>
  ) : (
    <p class="pinned" tabIndex={-1} ref={line}>
      This figure shows your box.
    </p>
  );
}
