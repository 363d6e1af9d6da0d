/** What a rule says about the box: its state in a word and a mark, the number, the usual range, the reason. */

import type { ComponentChildren } from 'preact';
import type { Verdict } from '../../box/core/verdict.ts';
import { href } from './href.ts';
import { InBoth, stateWords } from './told.tsx';

export function VerdictLine({ verdict, children }: { verdict: Verdict; children?: ComponentChildren }) {
  const { check, state, usual, because } = verdict;
  const [mark, word] = stateWords[state];
  return (
    <li class={`verdict ${state}`} data-check={check.id} tabIndex={-1}>
      <span class="mark" aria-hidden="true">
        {mark}
      </span>
      <div>
        <a href={href(`rules/${check.rule}/`)}>{check.label}</a>
        {state === 'unknown' ? (
          `: ${word}`
        ) : (
          <>
            :{' '}
            <strong>
              <InBoth verdict={verdict} part={({ measured }) => measured} />
            </strong>
            , {word}
            {usual.some(Number.isFinite) && (
              <>
                {' '}
                (<InBoth verdict={verdict} part={(told) => told.usual} />)
              </>
            )}
          </>
        )}
        . <span class="because">{because}</span>
        {children}
      </div>
    </li>
  );
}
