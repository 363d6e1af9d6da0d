/** What a rule says about the box: its state in a word and a mark, the number, the usual range, the reason. */
import type { ComponentChildren } from 'preact';
import type { Verdict } from '../box/verdict.ts';
import { Quantity } from '../figures/parts/Quantity.tsx';

const words = {
  usual: ['✓', 'inside the usual range'],
  unusual: ['△', 'outside the usual range'],
  breaks: ['×', 'breaks something'],
} as const;

const root = import.meta.env.BASE_URL;

export function VerdictLine({ verdict, children }: { verdict: Verdict; children?: ComponentChildren }) {
  const { check, state, measured, usual, because } = verdict;
  const [mark, word] = words[state];
  const [low, high] = usual;
  return (
    <li class={`verdict ${state}`}>
      <span class="mark" aria-hidden="true">
        {mark}
      </span>
      <div>
        <a href={`${root}rules/${check.rule}/`}>{check.label}</a>:{' '}
        <strong>
          <Quantity value={measured} kind={check.kind} digits={check.digits} />
        </strong>
        , {word}
        {Number.isFinite(low) && Number.isFinite(high) && (
          <>
            {' '}
            (<Quantity value={low} kind={check.kind} digits={check.digits} /> to{' '}
            <Quantity value={high} kind={check.kind} digits={check.digits} />)
          </>
        )}
        {Number.isFinite(low) && !Number.isFinite(high) && (
          <>
            {' '}
            (at least <Quantity value={low} kind={check.kind} digits={check.digits} />)
          </>
        )}
        {!Number.isFinite(low) && Number.isFinite(high) && (
          <>
            {' '}
            (at most <Quantity value={high} kind={check.kind} digits={check.digits} />)
          </>
        )}
        . <span class="because">{because}</span>
        {children}
      </div>
    </li>
  );
}
