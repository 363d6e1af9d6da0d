/** What stands in the place of answers: that there is none, what comes nearest, how others ask, and doors to look through. */
import { question as asked } from '../kit/ask.ts';
import { href } from '../kit/href.ts';
import { pages } from './pages.ts';
import type { Found } from './search.ts';

/** How people ask; each is a press away. */
const common = [
  'how wide is my bottom?',
  'lid sticks in summer',
  'how thick should the walls be?',
  'bottom 1/4',
  'walnut',
  'gap beside the bottom',
];

export function Nothing({ found: { unknown, nearest }, question }: { found: Found; question: string }) {
  return (
    <>
      <p class="nothing">
        Nothing here answers “{question.trim()}”.{' '}
        {unknown.length > 0 && (
          <>
            “{unknown.join('”, “')}” {unknown.length > 1 ? 'are no words' : 'is no word'} of this site.
          </>
        )}
      </p>
      {nearest.length > 0 && (
        <>
          <p class="doors-title">The nearest there is</p>
          <ul>
            {nearest.map(({ id, title, path }) => (
              <li key={id}>
                <a class="answer-title" href={href(path)}>
                  {title}
                </a>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** Where to look without a question. */
export function Doors() {
  return (
    <>
      <p class="doors-title">Ask, for example</p>
      <ul class="common">
        {common.map((one) => (
          <li key={one}>
            <button
              type="button"
              class="quiet"
              onClick={({ currentTarget }) => {
                asked.value = one;
                currentTarget.closest('dialog')?.querySelector('input')?.focus();
              }}
            >
              {one}
            </button>
          </li>
        ))}
      </ul>
      <p class="doors-title">Or look through</p>
      <ul class="common">
        {pages.map(({ id, title, path }) => (
          <li key={id}>
            <a href={href(path)}>{title}</a>
          </li>
        ))}
      </ul>
    </>
  );
}
