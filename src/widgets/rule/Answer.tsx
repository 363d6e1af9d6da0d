/** One number that a rule judges: large, with its verdict in words, the usual range, and what sets it. */
import type { NumberField } from '../../box/core/field.ts';
import type { Check, Verdict } from '../../box/core/verdict.ts';
import { fields, hasInput, type NumberName } from '../../box/subjects/inputs.ts';
import type { Model } from '../../box/subjects/model.ts';
import type { ResultName, Values } from '../../box/whole/index.ts';
import { OwnUnits } from '../kit/late/OwnUnits.tsx';
import { InBoth, numberAndMark, stateWords } from '../kit/told.tsx';
import type { Store } from '../kit/use-store.ts';
import { ChangeBy } from './ChangeBy.tsx';
import { OwnNumber } from './OwnNumber.tsx';
import { RangeBar } from './RangeBar.tsx';

interface Props {
  verdict: Verdict<Values>;
  store: Store;
  model: Model;
}

/** Inputs of a number that are named beside it. */
const most = 3;

export function Answer({ verdict, store, model }: Props) {
  const { check, state, because } = verdict;
  const [mark, word] = stateWords[state];
  const values = store.values.value;
  const row = model.results[check.of as ResultName];
  return (
    <div class={`answer ${state}`} data-check={check.id}>
      <p class="answer-label">
        <OwnUnits of={check.label} />
      </p>
      {state !== 'unknown' && (
        <p class="answer-number">
          <InBoth verdict={verdict} part={({ measured }) => numberAndMark(measured)[0]} />{' '}
          <small>
            <InBoth verdict={verdict} part={({ measured }) => numberAndMark(measured)[1]} />
          </small>
        </p>
      )}
      <p class="answer-says">
        <strong>
          <span aria-hidden="true">{mark}</span> {word}
        </strong>
        {state !== 'unknown' && verdict.usual.some(Number.isFinite) && (
          <>
            : <InBoth verdict={verdict} part={({ usual }) => usual} />
          </>
        )}
        . <OwnUnits of={because} />
      </p>
      <RangeBar verdict={verdict} values={values} />
      <OwnInput of={check.of} store={store} />
      <ChangeBy row={row} values={values} model={model} most={most} />
    </div>
  );
}

/** The stepper of a number that the reader sets. */
function OwnInput({ of, store }: { of: string; store: Store }) {
  const values = store.values.value;
  if (!(of in fields) || !hasInput(of as NumberName, values)) return null;
  const name = of as NumberName;
  return (
    <OwnNumber
      field={fields[name] as NumberField}
      value={values[name]}
      system={store.units.value}
      set={(value) => store.set({ [name]: value })}
    />
  );
}

/** Whether a rule would speak about this box if the number it judges were set. */
const waitsFor = ({ of, applies }: Check<Values>, values: Values) => {
  if (!(of in fields) || !hasInput(of as NumberName, values)) return false;
  return applies?.({ ...values, [of]: (fields[of as NumberName] as NumberField).high }) ?? true;
};

/** A rule that does not speak about this box: what it would judge, and the input where it waits for a measured number. */
export function NotJudged({ check, store }: { check: Check<Values>; store: Store }) {
  const waits = waitsFor(check, store.values.value);
  return (
    <div class="answer silent" data-check={check.id}>
      <p class="answer-label">
        <OwnUnits of={check.label} />
      </p>
      <p class="answer-says">
        {waits
          ? 'Not measured yet. Set it here, and it is judged.'
          : 'My box has none, so the rule is silent.'}
      </p>
      {waits && <OwnInput of={check.of} store={store} />}
    </div>
  );
}
