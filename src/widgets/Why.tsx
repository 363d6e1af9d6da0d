/**
 * The answer to "why?" for one result: the relation in symbols, with the reader's numbers, the result, what moves
 * it most, where it comes from, and the rule that teaches it.
 * Over 150 lines, because the line and the answer it opens to are drawn from the same values.
 */
import { type ReadonlySignal, useSignal } from '@preact/signals';
import { results } from '../box/evaluate.ts';
import { type AnyRelation, relationOf } from '../box/result.ts';
import type { ResultName, Values } from '../box/values.ts';
import { outsideRange, sensitivity, type Unit } from '../calc/relation.ts';
import { Quantity } from '../figures/parts/Quantity.tsx';
import { format, type UnitSystem } from '../units/index.ts';
import { kindOfUnit } from './kind-of-unit.ts';

/** MathML of a relation, made when the site is built: in symbols, and with a place for each number. */
export interface Equation {
  readonly symbols: string;
  readonly numbers: string;
}
export type Equations = Readonly<Record<string, Equation>>;

/** Address of the site's root, for links made in the browser. */
const root = import.meta.env.BASE_URL;

/** Decimals of an input: pure numbers such as a coefficient of 0.00248 need as many as they have. */
const digitsOf = (unit: Unit) => (kindOfUnit(unit) === 'number' ? undefined : 2);

/** Puts numbers into the places that `equationOf` left for them: `<mn class="n-t">`. */
function fill(numbers: string, of: AnyRelation, given: Readonly<Record<string, number>>, system: UnitSystem) {
  return numbers.replace(/<mn class="n-(\w+)">[^<]*<\/mn>/g, (_, symbol: string) => {
    const { unit } = of.inputs[symbol]!;
    return `<mn>${format(given[symbol]!, kindOfUnit(unit), { system, digits: digitsOf(unit) })}</mn>`;
  });
}

interface ResultProps {
  name: ResultName;
  values: ReadonlySignal<Values>;
  units: ReadonlySignal<UnitSystem>;
  equations: Equations;
}

/** A result with its number; opens to its reason. */
export function ResultLine({ name, values, units, equations }: ResultProps) {
  const result = results[name];
  const open = useSignal(false);
  const of = relationOf(result, values.value);
  const beyond = outsideRange(of, pick(of, result.given(values.value)));
  return (
    <details
      class="result"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>
        <span class="result-label">{result.label}</span>{' '}
        <strong>
          {beyond ? (
            'no number'
          ) : (
            <Quantity
              value={values.value[name]}
              kind={result.kind}
              digits={result.digits}
              denominator={result.denominator}
              round={result.round}
            />
          )}
        </strong>{' '}
        <span class="why">why?</span>
      </summary>
      {(open.value || typeof window === 'undefined') && (
        <Why name={name} values={values} units={units} equations={equations} />
      )}
    </details>
  );
}

const pick = (of: AnyRelation, given: Readonly<Record<string, number>>): Record<string, number> =>
  Object.fromEntries(Object.keys(of.inputs).map((symbol) => [symbol, given[symbol]!]));

const greek: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  eta: 'η',
  theta: 'θ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  psi: 'ψ',
  omega: 'ω',
  Delta: 'Δ',
  Phi: 'Φ',
};

/** A symbol of the equation in running text: `sigma_t` as σ with a small t. */
function SymbolName({ symbol }: { symbol: string }) {
  const [head = '', tail] = symbol.split('_');
  return (
    <i class="symbol">
      {greek[head] ?? head}
      {tail && <sub>{tail}</sub>}
    </i>
  );
}

function Why({ name, values, units, equations }: ResultProps) {
  const result = results[name];
  const of = relationOf(result, values.value);
  const given = pick(of, result.given(values.value));
  const equation = equations[of.id];
  const beyond = outsideRange(of, given);
  const [strongest] = sensitivity(of, given);
  return (
    <div class="reason">
      <p class="reason-title">{of.title}</p>
      {equation && (
        <>
          <p class="equation" dangerouslySetInnerHTML={{ __html: equation.symbols }} />
          <p
            class="equation"
            dangerouslySetInnerHTML={{ __html: fill(equation.numbers, of, given, units.value) }}
          />
        </>
      )}
      <ul class="symbols">
        {Object.entries(of.inputs).map(([symbol, spec]) => (
          <li key={symbol}>
            <SymbolName symbol={symbol} /> {spec.name}:{' '}
            <Quantity value={given[symbol]!} kind={kindOfUnit(spec.unit)} digits={digitsOf(spec.unit)} />
          </li>
        ))}
      </ul>
      {beyond && (
        <p class="message">
          No number: {beyond.spec.name} is outside the range of this relation,{' '}
          <Quantity value={beyond.spec.range[0]} kind={kindOfUnit(beyond.spec.unit)} /> to{' '}
          <Quantity value={beyond.spec.range[1]} kind={kindOfUnit(beyond.spec.unit)} />.
        </p>
      )}
      {strongest && !beyond && (
        <p>
          What moves it most: {of.inputs[strongest.symbol]!.name}. A tenth more makes it about{' '}
          {format(Math.abs(strongest.elasticity) * 10, 'percent', { system: 'mm', digits: 0 })}{' '}
          {strongest.elasticity > 0 ? 'larger' : 'smaller'}.
        </p>
      )}
      <p>
        Evidence: {of.evidence}. {of.source}
        {of.limits && ` ${of.limits}`}
        {result.rule && (
          <>
            {' '}
            <a href={`${root}rules/${result.rule}/`}>The rule</a>
          </>
        )}
      </p>
    </div>
  );
}
