/**
 * A figure with its controls, one sentence on what it shows, and its results. A lesson names a lab; the lab is data.
 */
import { useComputed, useSignal } from '@preact/signals';
import type { ComponentChildren, RefObject } from 'preact';
import { useRef } from 'preact/hooks';
import { type Result, sayOf } from '../../box/core/result.ts';
import { type Box, type ChoiceName, isInForce, type NumberName } from '../../box/subjects/inputs.ts';
import type { Model } from '../../box/subjects/model.ts';
import type { ResultName, Values } from '../../box/whole/index.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { Control, NumberControl } from '../kit/Control.tsx';
import { RelationLine } from '../kit/ResultLine.tsx';
import { useStore } from '../kit/use-store.ts';
import { LabTries } from './LabTries.tsx';
import type { LabSpec } from './lab-spec.ts';
import { OwnChoice } from './OwnChoice.tsx';

export interface LabProps {
  spec: LabSpec;
  model: Model;
  /** Inputs the lesson fixes for this figure. */
  pins?: Partial<Box>;
}

export function Lab({ spec, model, pins }: LabProps) {
  const store = useStore(model, pins);
  const { figure: Figure, own = {}, solve } = spec;
  const mine = useSignal(Object.fromEntries(Object.entries(own).map(([name, { start }]) => [name, start])));
  const found = useComputed(() => {
    const all = { ...store.values.value, ...mine.value };
    const solved = solve?.(all) ?? {};
    return isRefused(solved) ? solved : { ...all, ...solved };
  });
  const all = found.value;
  const refused = isRefused(all);
  /** A slider that moves nothing is not shown. */
  const acts = (name: string) => name in own || isInForce(name as keyof Box, store.values.value);
  const control = (name: string) => {
    const field = own[name];
    const set = (value: number | string) => {
      mine.value = { ...mine.value, [name]: value };
    };
    if (!field) return <Control key={name} name={name as NumberName | ChoiceName} store={store} />;
    return field.type === 'number' ? (
      <NumberControl
        key={name}
        field={field}
        value={mine.value[name] as number}
        system={store.units.value}
        set={set}
      />
    ) : (
      <OwnChoice key={name} field={field} value={mine.value[name] as string} set={set} />
    );
  };
  const rows = spec.results.map((row): readonly [string, Result<Values>] =>
    typeof row === 'string' ? [row, model.results[row as ResultName]!] : [row.label, row],
  );
  return (
    <LabFrame
      within={store.ref}
      title={spec.title}
      picture={
        refused ? (
          <p class="says message" role="status">
            {all.refused}
          </p>
        ) : (
          <>
            <Figure values={all} />
            <p class="says">{spec.says(all)}</p>
          </>
        )
      }
      controls={
        <>
          {spec.controls.filter(acts).map(control)}
          {spec.more && (
            <details class="more">
              <summary>more to change</summary>
              {spec.more.filter(acts).map(control)}
            </details>
          )}
          {pins && <Pinned store={store} />}
        </>
      }
      results={
        !refused &&
        rows
          // A number that this box does not have is not shown.
          .filter(([, row]) => row.when?.(all) ?? true)
          .map(([key, row]) => (
            <RelationLine key={key} {...sayOf(row)} working={row.work(all)} units={store.units.value} />
          ))
      }
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
      <LabTries title={title} />
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
