/**
 * The sum behind a rule: the formula, the same with the numbers of the reader's box put in, and each symbol by its name
 * with its number and the way to what changes it.
 */
import { useMemo } from 'preact/hooks';
import { sayOf } from '../../box/core/result.ts';
import type { Verdict } from '../../box/core/verdict.ts';
import { inputsBehind } from '../../box/subjects/behind.ts';
import type { Model } from '../../box/subjects/model.ts';
import type { ResultName, Values } from '../../box/whole/index.ts';
import { sensitivity, type Working } from '../../calc/core/working.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { format, type UnitSystem } from '../../units/index.ts';
import { kindOfUnit } from '../kit/late/kind-of-unit.ts';
import { OwnUnits } from '../kit/late/OwnUnits.tsx';
import { digitsOf, Equation, fill, SymbolName } from '../kit/late/Why.tsx';
import type { Reason } from '../kit/reasons.ts';
import { InBoth } from '../kit/told.tsx';
import { ChangeIt } from './ChangeIt.tsx';
import { choicesOf } from './choices-of.ts';

export interface SumSpec {
  /** Id of the relation. */
  readonly relation: string;
  readonly said: Reason;
  /** Results of the box that it gives, the one that this rule is about first. */
  readonly rows: readonly ResultName[];
}

interface Props extends SumSpec {
  /** What the rule judges: printed here as it is there. */
  verdicts: readonly Verdict<Values>[];
  values: Values;
  model: Model;
  units: UnitSystem;
}

export function Sum({ relation, said, rows, verdicts, values, model, units }: Props) {
  /** The first that this box has, and has by this relation. */
  const name = rows.find((one) => {
    const { when, work } = model.results[one]!;
    return (when?.(values) ?? true) && work(values).of.id === relation;
  });
  const row = name && model.results[name];
  const working = row?.work(values);
  const verdict = verdicts.find(({ check, state }) => check.of === name && state !== 'unknown');
  const links = useMemo(
    () =>
      row &&
      Object.fromEntries(
        Object.keys(said.names).map((symbol) => [symbol, inputsBehind(model.results, row, values, symbol)]),
      ),
    [row, choicesOf(values)],
  );
  return (
    <section class="sum">
      <h3>{said.title}</h3>
      <Equation mathml={said.symbols} />
      {row && working && (
        <>
          <Equation mathml={fill(said.numbers, working.of, working.given, units)} />
          <p class="sum-result">
            <OwnUnits of={row.label} />:{' '}
            <strong>
              {working.outside ? (
                'no number'
              ) : verdict ? (
                <InBoth verdict={verdict} part={({ measured }) => measured} />
              ) : (
                <Quantity value={working.value} {...sayOf(row)} />
              )}
            </strong>
          </p>
        </>
      )}
      <ul class={row ? 'symbols' : 'symbols plain'}>
        {Object.entries(said.names).map(([symbol, name]) => {
          const spec = working?.of.inputs[symbol];
          return (
            <li key={symbol}>
              <SymbolName symbol={symbol} />
              <span>
                {name}
                {links?.[symbol]?.map((input) => (
                  <ChangeIt key={input} input={input} />
                ))}
              </span>
              {working && spec && (
                <b>
                  <Quantity value={working.given[symbol]!} kind={kindOfUnit(spec)} digits={digitsOf(spec)} />
                </b>
              )}
            </li>
          );
        })}
      </ul>
      {working && <Strongest working={working} said={said} />}
    </section>
  );
}

/** What moves the number most; or why there is none. */
function Strongest({ working, said }: { working: Working; said: Reason }) {
  const { outside: beyond } = working;
  if (beyond)
    return (
      <p class="message">
        No number: {said.names[beyond.symbol]} is outside the range of this relation,{' '}
        <Quantity value={beyond.spec.range[0]} kind={kindOfUnit(beyond.spec)} /> to{' '}
        <Quantity value={beyond.spec.range[1]} kind={kindOfUnit(beyond.spec)} />.
      </p>
    );
  const [strongest] = sensitivity(working);
  if (!strongest) return null;
  const by = format(Math.abs(strongest.elasticity) * 10, 'percent', { system: 'mm', digits: 0 });
  return (
    <p class="strongest">
      Moves it most: {said.names[strongest.symbol]}. A tenth more makes it about {by}{' '}
      {strongest.elasticity > 0 ? 'larger' : 'smaller'}.
    </p>
  );
}
