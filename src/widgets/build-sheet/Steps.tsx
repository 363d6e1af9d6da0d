/** The order of work: a box to tick, what to do, the check, and the caution where it can hurt. */

import { type CautionName, cautions, rider } from '../../box/work/cautions.ts';
import type { Step } from '../../box/work/step.ts';
import { href } from '../kit/href.ts';
import { Phrase } from './Phrase.tsx';

/** Short names of cited works by id. */
export type SourceNames = Readonly<Record<string, string>>;

function Sources({ ids, names }: { ids: readonly string[]; names: SourceNames }) {
  return (
    <>
      {ids.map((id, index) => (
        <span key={id}>
          {index > 0 && ', '}
          <a href={href(`sources/#${id}`)}>{names[id] ?? id}</a>
        </span>
      ))}
    </>
  );
}

export function Steps({ steps, names }: { steps: readonly Step[]; names: SourceNames }) {
  const first = new Map<CautionName, number>();
  steps.forEach(({ caution }, index) => {
    if (caution && !first.has(caution)) first.set(caution, index + 1);
  });
  return (
    <>
      <p class="rider">{rider}</p>
      <ol class="steps">
        {steps.map(({ id, does, check, caution, rule }, index) => {
          const told = caution && first.get(caution);
          const { says = '', sources = [] } = caution ? cautions[caution] : {};
          return (
            <li key={id}>
              <span class="tick" aria-hidden="true" />
              <div>
                <Phrase words={does} />{' '}
                {rule && (
                  <a class="screen-only" href={href(`rules/${rule}/`)}>
                    why
                  </a>
                )}
                {check && (
                  <p class="check">
                    <b>Check:</b> <Phrase words={check} />
                  </p>
                )}
                {caution && (
                  <p class="step-caution">
                    <b>Caution:</b>{' '}
                    {told === index + 1 ? (
                      <>
                        {says} {sources.length > 0 && <Sources ids={sources} names={names} />}
                      </>
                    ) : (
                      `as in step ${told}.`
                    )}
                  </p>
                )}
              </div>
            </li>
          );
        })}
      </ol>
    </>
  );
}
