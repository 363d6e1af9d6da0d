/**
 * New numbers: a question about another box, answered with a number. The usual mistakes are named when they are made.
 */

import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { printOf } from '../../box/core/field.ts';
import { exampleBox } from '../../box/subjects/example.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { fields, type NumberName } from '../../box/subjects/inputs.ts';
import { compute, type Model } from '../../box/subjects/model.ts';
import type { ResultName } from '../../box/whole/index.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { units } from '../../notebook/units.ts';
import { readNumber } from '../kit/read-number.ts';
import { HeardUnit, Unit } from '../kit/Unit.tsx';

export interface Props {
  /** The question after the numbers: "What is the inside ratio?" */
  ask: string;
  /** Sets of inputs on top of the example; "other numbers" goes to the next. */
  sets: readonly Partial<Box>[];
  /** The inputs named in the question. */
  tell: readonly NumberName[];
  result: ResultName;
  /** How near counts as right, in the result's unit. */
  within: number;
  /** Usual mistakes: another result, times a factor, that a slip would give, and what to say about it. */
  slips?: readonly { result: ResultName; times?: number; says: string }[];
}

export function Exercise({
  model,
  ask,
  sets,
  tell,
  result: name,
  within,
  slips = [],
}: Props & { model: Model }) {
  const id = useId();
  const which = useSignal(0);
  const text = useSignal('');
  const said = useSignal<{ right: boolean; words: string } | undefined>(undefined);

  const values = compute(model.results, { ...exampleBox, ...sets[which.value % sets.length] });
  const result = model.results[name]!;
  const right = values[name];

  const check = async (event: Event) => {
    event.preventDefault();
    const parsed = await readNumber(text.value, result.kind, units.value);
    if (!parsed.ok) said.value = { right: false, words: parsed.message };
    else if (Math.abs(parsed.value - right) <= within) said.value = { right: true, words: 'Right.' };
    else {
      const slip = slips.find(
        (one) => Math.abs(values[one.result] * (one.times ?? 1) - parsed.value) <= within,
      );
      said.value = {
        right: false,
        words:
          slip?.says ?? `Too ${parsed.value > right ? 'large' : 'small'}. Try again, or look at the answer.`,
      };
    }
  };

  return (
    <form class="exercise" onSubmit={check}>
      <h2 class="step">New numbers</h2>
      <p>
        {tell.map((input, index) => (
          <span key={input}>
            {index > 0 && ', '}
            {fields[input].label}{' '}
            <Quantity value={values[input]} kind={fields[input].kind} {...printOf(fields[input])} />
          </span>
        ))}
        .{' '}
        <label for={id}>
          {ask}
          <HeardUnit kind={result.kind} />
        </label>
      </p>
      <p>
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={text.value}
          aria-describedby={`${id}m`}
          onInput={(event) => {
            text.value = event.currentTarget.value;
          }}
        />{' '}
        <Unit kind={result.kind} /> <button type="submit">check</button>{' '}
        <button
          type="button"
          class="quiet"
          onClick={() => {
            which.value += 1;
            text.value = '';
            said.value = undefined;
          }}
        >
          other numbers
        </button>
      </p>
      <p id={`${id}m`} role="status" class={said.value?.right ? 'right' : 'message'}>
        {said.value?.words}
      </p>
      <details>
        <summary>the answer</summary>
        <p>
          {result.label}:{' '}
          <Quantity
            value={right}
            kind={result.kind}
            digits={result.digits}
            denominator={result.denominator}
            as={result.as}
          />
          .
        </p>
      </details>
    </form>
  );
}
