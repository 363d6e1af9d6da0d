/**
 * The answer to "why?" for one result: the relation in symbols, with the reader's numbers, the result, what moves
 * it most, where it comes from, and the rule that teaches it.
 * Over 150 lines, because the line and the answer it opens to are drawn from the same values.
 */
import { type ReadonlySignal, useSignal } from '@preact/signals';
import type { Model } from '../box/model.ts';
import { type AnyRelation, type Result, relationOf } from '../box/result.ts';
import type { ResultName, Values } from '../box/values.ts';
import { outsideRange, sensitivity, type Unit } from '../calc/relation.ts';
import { Quantity } from '../figures/parts/Quantity.tsx';
import { format, type Kind, type UnitSystem } from '../units/index.ts';
import { kindOfUnit } from './kind-of-unit.ts';
import { fetchWords, words, wordsMissing } from './words.ts';

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
  model: Model;
  name: ResultName;
  values: ReadonlySignal<Values>;
  units: ReadonlySignal<UnitSystem>;
}

/** A result of the box with its number; opens to its reason. */
export function ResultLine({ model, name, values, units }: ResultProps) {
  const result = model.results[name]!;
  return (
    <RelationLine
      {...result}
      of={relationOf(result, values.value)}
      given={result.given(values.value)}
      value={values.value[name]}
      units={units.value}
    />
  );
}

export interface RelationLineProps extends Pick<Result<Values>, 'digits' | 'denominator' | 'round' | 'rule'> {
  /** As a reader meets it, lower case. */
  label: string;
  kind: Kind;
  of: AnyRelation;
  /** Inputs by symbol; more than the relation takes do no harm. */
  given: Readonly<Record<string, number>>;
  /** The number, where it is known already; else the relation computes it. */
  value?: number;
  units: UnitSystem;
}

/** One number that a relation gives, of the box or of a figure's own; opens to its reason. Outside the relation's range there is no number. */
export function RelationLine({ label, kind, of, value, units, rule, ...rest }: RelationLineProps) {
  const open = useSignal(false);
  const { given: all, ...shown } = rest;
  const given = pick(of, all);
  return (
    <details
      class="result"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
        if (open.value) void fetchWords();
      }}
    >
      <summary>
        <span class="result-label">{label}</span>{' '}
        <strong>
          {outsideRange(of, given) ? (
            'no number'
          ) : (
            <Quantity value={value ?? of.compute(given)} kind={kind} {...shown} />
          )}
        </strong>{' '}
        <span class="why">why?</span>
      </summary>
      {(open.value || typeof window === 'undefined') && (
        <Why of={of} given={given} rule={rule} units={units} />
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

/** A formula; a wide one scrolls by itself, also by keyboard. */
function Equation({ mathml }: { mathml: string }) {
  return (
    <section
      class="equation"
      tabIndex={0}
      aria-label="formula"
      dangerouslySetInnerHTML={{ __html: mathml }}
    />
  );
}

function Why({ of, given, rule, units }: Pick<RelationLineProps, 'of' | 'given' | 'rule' | 'units'>) {
  const said = words.value[of.id];
  if (!said)
    return (
      <p class="reason" role="status">
        {wordsMissing.value
          ? 'The reason could not be fetched. Close this and open it again.'
          : 'One moment …'}
      </p>
    );
  const beyond = outsideRange(of, given);
  const [strongest] = sensitivity(of, given);
  return (
    <div class="reason">
      <p class="reason-title">{said.title}</p>
      <Equation mathml={said.symbols} />
      <Equation mathml={fill(said.numbers, of, given, units)} />
      <ul class="symbols">
        {Object.entries(of.inputs).map(([symbol, spec]) => (
          <li key={symbol}>
            <SymbolName symbol={symbol} /> {said.names[symbol]}:{' '}
            <Quantity value={given[symbol]!} kind={kindOfUnit(spec.unit)} digits={digitsOf(spec.unit)} />
          </li>
        ))}
      </ul>
      {beyond && (
        <p class="message">
          No number: {said.names[beyond.symbol]} is outside the range of this relation,{' '}
          <Quantity value={beyond.spec.range[0]} kind={kindOfUnit(beyond.spec.unit)} /> to{' '}
          <Quantity value={beyond.spec.range[1]} kind={kindOfUnit(beyond.spec.unit)} />.
        </p>
      )}
      {strongest && !beyond && (
        <p>
          What moves it most: {said.names[strongest.symbol]}. A tenth more makes it about{' '}
          {format(Math.abs(strongest.elasticity) * 10, 'percent', { system: 'mm', digits: 0 })}{' '}
          {strongest.elasticity > 0 ? 'larger' : 'smaller'}.
        </p>
      )}
      <p>
        Evidence: {said.evidence}. {said.source}
        {said.limits && ` ${said.limits}`}
        {rule && (
          <>
            {' '}
            <a href={`${root}rules/${rule}/`}>The rule</a>
          </>
        )}
      </p>
    </div>
  );
}
