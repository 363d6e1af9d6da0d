/** The order of work: stages of cards, with what is done counted. */
import { useEffect, useRef } from 'preact/hooks';
import { type CautionName, rider } from '../../box/work/cautions.ts';
import type { Planned } from '../../box/work/step.ts';
import type { Work } from '../../box/work/work.ts';
import { doneOf, loadDone, startOver, tick } from '../../notebook/done.ts';
import { useLead } from '../kit/use-lead.ts';
import { type SourceNames, StepCard } from './StepCard.tsx';

interface Props extends Pick<Work, 'stages' | 'steps'> {
  design: Planned;
  names: SourceNames;
}

export function Steps({ design, stages, steps, names }: Props) {
  useEffect(loadDone, []);
  const lead = useLead();
  const stageList = useRef<HTMLDivElement>(null);
  const { box } = design;
  const done = doneOf(box);
  const first = new Map<CautionName, number>();
  steps.forEach(({ caution }, index) => {
    if (caution && !first.has(caution)) first.set(caution, index + 1);
  });
  const count = steps.filter(({ id }) => done.steps.has(id)).length;
  return (
    <>
      <p class="rider">{rider}</p>
      <div class="steps-done screen-only">
        {count > 0 && (
          <p>
            <span role="status">
              {count} of {steps.length} done.
            </span>{' '}
            {done.changed && 'The box was changed after the last tick: look at what is done already. '}
            <button
              type="button"
              class="quiet"
              onClick={() => {
                lead(() => stageList.current?.querySelector('input'));
                startOver(box);
              }}
            >
              start over
            </button>
          </p>
        )}
      </div>
      <div class="stages" ref={stageList}>
        {stages.map(({ title, steps: own }) => (
          <section key={title}>
            <h3>{title}</h3>
            <ol class="steps" start={steps.indexOf(own[0]!) + 1}>
              {own.map((step) => (
                <StepCard
                  key={step.id}
                  design={design}
                  step={step}
                  number={steps.indexOf(step) + 1}
                  told={step.caution && first.get(step.caution)}
                  names={names}
                  isDone={done.steps.has(step.id)}
                  onTick={(isDone) => tick(box, step.id, isDone)}
                />
              ))}
            </ol>
          </section>
        ))}
      </div>
    </>
  );
}
