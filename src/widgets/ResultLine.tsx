/** A result with its number; it opens to its reason. */
import { type ReadonlySignal, signal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Model } from '../box/model.ts';
import { type AnyRelation, type Result, relationOf } from '../box/result.ts';
import type { ResultName, Values } from '../box/values.ts';
import { outsideRange } from '../calc/relation.ts';
import { Quantity } from '../figures/parts/Quantity.tsx';
import type { Kind, UnitSystem } from '../units/index.ts';
import { useOpen } from './use-open.ts';
import type { WhyProps } from './Why.tsx';
import { fetchWords } from './words.ts';

/** The reason's component: provided while pages are built, fetched in the browser with the first reason that is opened. */
const panel = signal<FunctionComponent<WhyProps> | undefined>(undefined);

/** While pages are built: what a reason is drawn with. */
export function provideWhy(Why: FunctionComponent<WhyProps>): void {
  panel.value = Why;
}

function fetchWhy(): void {
  void fetchWords();
  void import('./Why.tsx').then(({ Why }) => {
    panel.value = Why;
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
  const { open, fold } = useOpen();
  useEffect(() => {
    if (open.value) fetchWhy();
  }, [open.value]);
  const Panel = panel.value;
  const { given: all, ...shown } = rest;
  const given = pick(of, all);
  return (
    <details class="result" {...fold}>
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
      {Panel && (open.value || import.meta.env.SSR) && (
        <Panel of={of} given={given} rule={rule} units={units} />
      )}
    </details>
  );
}

const pick = (of: AnyRelation, given: Readonly<Record<string, number>>): Record<string, number> =>
  Object.fromEntries(Object.keys(of.inputs).map((symbol) => [symbol, given[symbol]!]));
