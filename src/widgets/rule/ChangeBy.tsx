/** The inputs that move a number most, each the way to itself in my box; nothing where there are none. */
import { useMemo } from 'preact/hooks';
import type { Result } from '../../box/core/result.ts';
import { inputsBehind } from '../../box/subjects/behind.ts';
import { fields } from '../../box/subjects/inputs.ts';
import type { Model } from '../../box/subjects/model.ts';
import type { Values } from '../../box/whole/index.ts';
import { ChangeIt } from './ChangeIt.tsx';
import { choicesOf } from './choices-of.ts';

interface Props {
  row: Result<Values> | undefined;
  values: Values;
  model: Model;
  /** How many are named. */
  most: number;
}

export function ChangeBy({ row, values, model, most }: Props) {
  const behind = useMemo(
    () => (row ? inputsBehind(model.results, row, values, undefined, most) : []),
    [row, choicesOf(values)],
  );
  if (behind.length === 0) return null;
  return (
    <p class="answer-behind">
      Change it by:{' '}
      {behind.map((input, at) => (
        <span key={input}>
          {at > 0 && ', '}
          <ChangeIt input={input} words={fields[input].label} />
        </span>
      ))}
    </p>
  );
}
