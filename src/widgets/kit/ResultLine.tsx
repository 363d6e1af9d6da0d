/** A result with its number; it opens to its reason. */
import { type ReadonlySignal, signal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect } from 'preact/hooks';
import { type Say, sayOf } from '../../box/core/result.ts';
import type { Model } from '../../box/subjects/model.ts';
import type { ResultName, Values } from '../../box/whole/index.ts';
import type { Working } from '../../calc/core/working.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import type { UnitSystem } from '../../units/index.ts';
import type { WhyProps } from './late/Why.tsx';
import { fetchReasons } from './reasons.ts';
import { useOpen } from './use-open.ts';

/** The reason's component: provided while pages are built, fetched in the browser with the first reason that is opened. */
const panel = signal<FunctionComponent<WhyProps> | undefined>(undefined);

/** While pages are built: what a reason is drawn with. */
export function provideWhy(Why: FunctionComponent<WhyProps>): void {
  panel.value = Why;
}

/** In place of a reason that could not be fetched; the next one that is opened tries again. */
function NotFetched() {
  return (
    <p class="reason" role="status">
      The reason could not be fetched. Close this and open it again when there is a network, or reload the
      page.
    </p>
  );
}

function fetchWhy(): void {
  void fetchReasons();
  import('./why-late.ts').then(
    ({ Why }) => {
      panel.value = Why;
    },
    () => {
      panel.value ??= NotFetched;
    },
  );
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
  return <RelationLine {...sayOf(result)} working={result.work(values.value)} units={units.value} />;
}

export interface RelationLineProps extends Omit<Say<Values>, 'when' | 'builds'> {
  working: Working;
  units: UnitSystem;
}

/** A reason behind a fold that is opened by the reader: fetched then, and drawn while it is open. */
export function useReason() {
  const { open, fold } = useOpen();
  useEffect(() => {
    if (open.value) fetchWhy();
  }, [open.value]);
  return { isOpen: open.value, fold, Panel: panel.value };
}

/** One number that a relation gives, of the box or of a figure's own; opens to its reason. Outside the relation's range there is no number. */
export function RelationLine({ label, kind, working, units, rule, ...shown }: RelationLineProps) {
  const { isOpen, fold, Panel } = useReason();
  return (
    <details class="result" {...fold}>
      <summary>
        <span class="result-label">{label}</span>{' '}
        <strong>
          {working.outside ? 'no number' : <Quantity value={working.value} kind={kind} {...shown} />}
        </strong>{' '}
        <span class="why">why?</span>
      </summary>
      {Panel && (isOpen || import.meta.env.SSR) && <Panel working={working} rule={rule} units={units} />}
    </details>
  );
}
