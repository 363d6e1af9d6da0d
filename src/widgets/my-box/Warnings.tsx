/**
 * The warnings beside the plate: what breaks of any part and what is to look at in the chosen one, then the rest, a line
 * each. On a phone the rest comes after the chosen part.
 */
import type { ReadonlySignal } from '@preact/signals';
import { useLayoutEffect } from 'preact/hooks';
import type { Store } from '../kit/use-store.ts';
import { Mark } from '../verdicts/Mark.tsx';
import { Fold } from './Fold.tsx';
import type { PartOfBench } from './parts.ts';
import { RuleLines } from './RuleLines.tsx';
import { Tapes } from './Tapes.tsx';
import type { ShownWarnings } from './use-warnings.ts';
import { countOf, type Warning } from './warnings.ts';

interface Props {
  of: ShownWarnings;
  part: PartOfBench;
  store: Store;
  /** After warnings have come or gone. */
  onDrawn: () => void;
  onPart: (part: PartOfBench) => void;
}

/** In the order in which a reader needs them. */
const isFirst = (part: PartOfBench) => (warning: Warning) => warning.breaks || warning.part === part;

/** @param others also those about other parts: beside the plate, or on a phone where the reader asks for all */
export function Warnings({
  of,
  part,
  store,
  onDrawn,
  onPart,
  others,
}: Props & { others: 'none' | 'beside the plate' | 'asked for' }) {
  const { warnings } = of.shown.value;
  useLayoutEffect(onDrawn);
  const first = warnings.filter(isFirst(part));
  const isOther = (one: Warning) => !isFirst(part)(one);
  const full = first.find((one) => one.part === part && !one.breaks);
  return (
    <Tapes
      label="Warnings"
      warnings={others === 'none' ? first : [...first, ...warnings.filter(isOther)]}
      mends={of.mends.value}
      isFull={(one) => one.breaks || one === full}
      isOther={others === 'beside the plate' ? isOther : undefined}
      during={`${part} ${others}`}
      store={store}
      onMend={of.hurry}
      onPart={onPart}
    />
  );
}

/** What is to look at in other parts, a line each. */
export function OtherWarnings({ of, part, store, onPart }: Omit<Props, 'onDrawn'>) {
  return (
    <Tapes
      label="Warnings about other parts"
      warnings={of.shown.value.warnings.filter((one) => !isFirst(part)(one))}
      mends={of.mends.value}
      isFull={() => false}
      during={part}
      store={store}
      onMend={of.hurry}
      onPart={onPart}
    />
  );
}

/** What needs no look, folded to a line each. */
export function Kept({ of, store, ...rest }: Pick<Props, 'of' | 'store'> & { class?: string }) {
  const { kept, unknown, accepted } = of.shown.value;
  return (
    <div class={`kept-lines ${rest.class ?? ''}`}>
      <Fold
        class="kept-rules"
        summary={
          <>
            <Mark of="kept" /> {kept.length} rules kept
          </>
        }
      >
        {() => <KeptNow of={of.shown} which="kept" store={store} />}
      </Fold>
      {unknown.length > 0 && (
        <Fold summary={`? ${unknown.length} cannot be judged`}>
          {() => <KeptNow of={of.shown} which="unknown" store={store} />}
        </Fold>
      )}
      {accepted.length > 0 && (
        <Fold class="accepted-rules" summary={`${accepted.length} left on purpose`}>
          {() => <KeptNow of={of.shown} which="accepted" store={store} />}
        </Fold>
      )}
    </div>
  );
}

interface KeptProps {
  of: ReadonlySignal<ShownWarnings['shown']['value']>;
  which: 'kept' | 'unknown' | 'accepted';
  store: Store;
}

const KeptNow = ({ of, which, store }: KeptProps) => <RuleLines verdicts={of.value[which]} store={store} />;

/** The state of the checks for the ear, once the hand has rested. */
export function HeardState({ of }: Pick<Props, 'of'>) {
  const { breaks, looks } = countOf(of.shown.value.warnings);
  return (
    <p class="heard" role="status">
      {breaks > 0 ? `${breaks} broken, ` : 'Nothing is broken, '}
      {looks} to look at.
    </p>
  );
}
