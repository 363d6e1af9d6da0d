/**
 * A guess inside its figure. Blank: the start is drawn. Marked: the reader's mark too, in pencil. Open: the truth is drawn
 * over it and one sentence compares the two. The reason beside the card belongs to the page (`prose/Guess.astro`), which
 * reads the state from the card's section.
 */
import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Box } from '../../box/subjects/inputs.ts';
import type { Model } from '../../box/subjects/model.ts';
import { guesses, loadGuesses, rememberGuess, skipped } from '../../notebook/predictions.ts';
import { units } from '../../notebook/units.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Control } from '../kit/Control.tsx';
import { useLead } from '../kit/use-lead.ts';
import { GuessBar } from './GuessBar.tsx';
import { type GuessSpec, valuesOfGuess } from './guess-spec.ts';
import { guessesOnPage } from './guesses-on-page.ts';
import { PickBar } from './PickBar.tsx';

export interface GuessCardProps {
  /** Unique in the notebook: the guess is kept under it. */
  id: string;
  spec: GuessSpec;
  model: Model;
}

/** Tells the page that a guess was opened or covered; `detail` is 'done', 'skipped' or 'covered'. */
const guessEvent = 'guess';

export function GuessCard({ id, spec, model }: GuessCardProps) {
  const root = useRef<HTMLDivElement>(null);
  /** Both systems are in the page until it is awake; then the reader's alone is drawn. */
  const awake = useSignal(false);
  const moved = useSignal<Partial<Box>>({});
  const justNow = useSignal(false);
  const kept = useComputed(() => (awake.value ? guesses.value[id] : undefined));
  const open = kept.value !== undefined;
  const lead = useLead();

  useEffect(() => {
    loadGuesses();
    awake.value = true;
  }, []);
  useEffect(() => {
    const section = root.current?.closest<HTMLElement>('.guess-card');
    if (!section || !awake.value) return;
    guessesOnPage.set(section, { spec, model });
    section.dataset.state = open ? (kept.value === skipped ? 'skipped' : 'open') : 'blank';
    const outcome = section.querySelector('details');
    if (outcome) outcome.open = open;
  }, [open, kept.value, awake.value]);

  const tell = (detail: 'done' | 'skipped' | 'covered') =>
    root.current?.dispatchEvent(new CustomEvent(guessEvent, { bubbles: true, detail }));
  const commit = (text: string) => {
    justNow.value = true;
    rememberGuess(id, text);
    lead(() => root.current?.querySelector<HTMLElement>('.guess-answer'));
    tell(text === skipped ? 'skipped' : 'done');
  };
  const cover = () => {
    moved.value = {};
    justNow.value = false;
    rememberGuess(id, '');
    lead(() => root.current?.querySelector('input'));
    tell('covered');
  };

  const system = useComputed<UnitSystem>(() => (awake.value ? units.value : 'mm'));
  const values = useComputed(() => valuesOfGuess(spec, model, system.value, moved.value));
  const store = {
    values,
    units: system,
    set: (inputs: Partial<Box>) => {
      moved.value = { ...moved.value, ...inputs };
    },
  };
  const bar = { id, model, spec, open, commit, cover, kept: kept.value, store, fresh: justNow.value };
  return (
    <div ref={root} class={open ? 'opened' : undefined}>
      {spec.type === 'number' ? (
        <GuessBar {...bar} spec={spec} awake={awake.value} />
      ) : (
        <PickBar {...bar} spec={spec} awake={awake.value} />
      )}
      {open && (
        <div class="guess-after">
          {Object.keys(moved.value).length > 0 && (
            <p class="says">{spec.answer(values.value, system.value)}</p>
          )}
          {spec.controls?.map((name) => (
            <Control key={name} name={name} store={store} />
          ))}
        </div>
      )}
    </div>
  );
}
