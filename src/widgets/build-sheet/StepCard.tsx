/** One step as a card: its picture, a tick, what to do, the check, and the caution where it can hurt. */
import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { type CautionName, cautions } from '../../box/work/cautions.ts';
import { pictureOf } from '../../box/work/pictures/index.ts';
import type { Planned, Step } from '../../box/work/step.ts';
import { StepPicture } from '../../figures/views/steps/StepPicture.tsx';
import { href } from '../kit/href.ts';
import { Phrase } from '../kit/Phrase.tsx';
import { useDrawn } from './use-drawn.ts';

/** Short names of cited works by id. */
export type SourceNames = Readonly<Record<string, string>>;

interface Props {
  design: Planned;
  step: Step;
  number: number;
  /** The step that says its caution in full. */
  told: number | undefined;
  names: SourceNames;
  isDone: boolean;
  onTick: (isDone: boolean) => void;
}

export function StepCard({ design, step, number, told, names, isDone, onTick }: Props) {
  const { does, check, caution, rule } = step;
  /** On a phone a step that is done folds; this unfolds it again. */
  const open = useSignal(false);
  return (
    <li id={`step-${number}`} class={`step-card ${isDone ? 'done' : ''} ${open.value ? 'open' : ''}`}>
      <Drawn design={design} step={step} />
      <div class="step-head">
        <span class="step-number">{number}</span>
        <label class="tick">
          <span class="screen-only">
            done<span class="heard">, step {number}</span>
          </span>
          <input
            type="checkbox"
            checked={isDone}
            onChange={({ currentTarget }) => onTick(currentTarget.checked)}
          />
        </label>
      </div>
      <div class="step-words">
        <p>
          <Phrase words={does} />{' '}
          {rule && (
            <a class="screen-only" href={href(`rules/${rule}/`)}>
              why
            </a>
          )}
        </p>
        {check && (
          <p class="check">
            <b>Check:</b> <Phrase words={check} />
          </p>
        )}
        {caution && <Caution name={caution} told={told === number ? undefined : told} names={names} />}
      </div>
      {isDone && (
        <button
          type="button"
          class="quiet unfold"
          aria-expanded={open.value}
          onClick={() => {
            open.value = !open.value;
          }}
        >
          {open.value ? 'fold' : 'show'}
          <span class="heard"> step {number}</span>
        </button>
      )}
    </li>
  );
}

function Drawn({ design, step: { picture } }: Pick<Props, 'design' | 'step'>) {
  const { ref, drawn } = useDrawn();
  const made = useMemo(() => (drawn ? pictureOf(picture, design) : undefined), [drawn, picture, design]);
  return (
    <div class="step-drawn" ref={ref}>
      {made && <StepPicture picture={made} />}
    </div>
  );
}

/** In full, or where it was said before. @param told the step that says it */
function Caution({ name, told, names }: { name: CautionName; told: number | undefined; names: SourceNames }) {
  const { hazard, safeguard, sources } = cautions[name];
  return (
    <p class="step-caution">
      <b>Caution:</b>{' '}
      {told === undefined ? (
        <>
          {hazard} {safeguard}{' '}
          {sources.map((id, index) => (
            <span key={id}>
              {index > 0 && ', '}
              <a href={href(`sources/#${id}`)}>{names[id] ?? id}</a>
            </span>
          ))}
        </>
      ) : (
        <>
          as in <a href={`#step-${told}`}>step {told}</a>.
        </>
      )}
    </p>
  );
}
