/**
 * The answer to "why?" for one number: the relation in symbols, with the reader's numbers, what moves it most, where
 * it comes from, and the rule that teaches it. Fetched with the first reason that is opened.
 */

import type { Card, SymbolSpec } from '../../../calc/core/relation.ts';
import { sensitivity, type Working } from '../../../calc/core/working.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { format, type UnitSystem } from '../../../units/index.ts';
import { href } from '../href.ts';
import { reasons, reasonsMissing } from '../reasons.ts';
import { kindOfUnit } from './kind-of-unit.ts';

/** Decimals of an input: pure numbers such as a coefficient of 0.00248 need as many as they have. */
export const digitsOf = (spec: SymbolSpec) => (kindOfUnit(spec) === 'number' ? undefined : 2);

/** Puts numbers into the places that `equationOf` left for them: `<mn class="n-t">`. */
export function fill(numbers: string, of: Card, given: Readonly<Record<string, number>>, system: UnitSystem) {
  return numbers.replace(/<mn class="n-(\w+)">[^<]*<\/mn>/g, (_, symbol: string) => {
    const spec = of.inputs[symbol]!;
    return `<mn>${format(given[symbol]!, kindOfUnit(spec), { system, digits: digitsOf(spec) })}</mn>`;
  });
}

export interface WhyProps {
  working: Working;
  /** Slug of the rule that teaches it. */
  rule?: string | undefined;
  units: UnitSystem;
}

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
export function SymbolName({ symbol }: { symbol: string }) {
  const [head = '', tail] = symbol.replace(/^([A-Za-z])(\d)$/, '$1_$2').split('_');
  return (
    <i class="symbol">
      {greek[head] ?? head}
      {tail && <sub>{tail}</sub>}
    </i>
  );
}

/** A formula; a wide one scrolls by itself, also by keyboard. */
export function Equation({ mathml }: { mathml: string }) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a formula is no set of fields.
    <div
      class="equation"
      role="group"
      tabIndex={0}
      aria-label="formula"
      dangerouslySetInnerHTML={{ __html: mathml }}
    />
  );
}

export function Why({ working, rule, units }: WhyProps) {
  const { of, given, outside: beyond } = working;
  const said = reasons.value[of.id];
  if (!said)
    return (
      <p class="reason" role="status">
        {reasonsMissing.value
          ? 'The reason could not be fetched. Close this and open it again.'
          : 'One moment …'}
      </p>
    );
  const [strongest] = sensitivity(working);
  return (
    <div class="reason">
      <p class="reason-title">{said.title}</p>
      <Equation mathml={said.symbols} />
      <Equation mathml={fill(said.numbers, of, given, units)} />
      <ul class="symbols">
        {Object.entries(of.inputs).map(([symbol, spec]) => (
          <li key={symbol}>
            <SymbolName symbol={symbol} /> {said.names[symbol]}:{' '}
            <Quantity value={given[symbol]!} kind={kindOfUnit(spec)} digits={digitsOf(spec)} />
          </li>
        ))}
      </ul>
      {beyond && (
        <p class="message">
          No number: {said.names[beyond.symbol]} is outside the range of this relation,{' '}
          <Quantity value={beyond.spec.range[0]} kind={kindOfUnit(beyond.spec)} /> to{' '}
          <Quantity value={beyond.spec.range[1]} kind={kindOfUnit(beyond.spec)} />.
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
            <a href={href(`rules/${rule}/`)}>The rule</a>
          </>
        )}
      </p>
    </div>
  );
}
