/** What a question brings up. Fetched with the first question. */
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { currentBox, loadBox } from '../../notebook/current.ts';
import { units } from '../../notebook/units.ts';
import style from '../../styles/answers.css?inline';
import { addStyle } from '../kit/add-style.ts';
import { useRested } from '../kit/follow.ts';
import { href } from '../kit/href.ts';
import { AnswerDrawing } from './AnswerDrawing.tsx';
import { AnswerRow } from './AnswerRow.tsx';
import type { AskFile, Entry } from './entry.ts';
import { type Found, type Search, searchOf } from './search.ts';
import { shownOf } from './shown.ts';
import { Doors, Nothing } from './Unanswered.tsx';
import { useArrows } from './use-arrows.ts';

export interface AnswersProps {
  question: string;
  file: AskFile;
  search: Search;
}

/** How long the hand rests before the count of answers is told, ms: not at every letter. */
const rest = 500;
/** Everything that answers are found in, made before the first of them is shown. Reading numbers is a late file of its own. */
export async function prepare(file: AskFile): Promise<Search> {
  const { parse } = await import('../../units/parse-late.ts');
  loadBox();
  return searchOf(file, parse, currentBox.value);
}

export function Answers({ question, file, search }: AnswersProps) {
  const list = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => addStyle(style), []);
  useArrows(list);
  const box = currentBox.value;
  const own = useMemo(() => search.own(box), [search, box]);
  const found = useMemo(() => search.find(question, box, units.value), [question, box, units.value]);
  const rested = useRested(question, rest) === question;
  const rules = useMemo(
    () => new Map(file.entries.flatMap((one) => (one.kind === 'rule' ? [[one.rule, one]] : []))),
    [file],
  );
  const ruleOf = (slug: string) => rules.get(slug);
  const { answers } = found;
  const first = answers[0];
  const isAsked = question.trim() !== '';
  return (
    <>
      <div class="answers" ref={list}>
        <HowRead found={found} />
        {isAsked && answers.length === 0 && <Nothing found={found} question={question} />}
        {answers.length > 0 && (
          <ol>
            {answers.map((entry) => (
              <li key={entry.id} class={`answer ${entry.kind}`}>
                <AnswerRow
                  entry={entry}
                  shown={shownOf(entry, own, (slug) => ruleOf(slug)?.usual)}
                  full={entry === first}
                  ruleOf={ruleOf}
                />
                {entry === first && entry.part && rested && (
                  <AnswerDrawing key={JSON.stringify(entry.part)} design={own.design} part={entry.part} />
                )}
              </li>
            ))}
          </ol>
        )}
        {answers.length === 0 && <Doors />}
      </div>
      <p class="ask-foot">
        <span role="status">{isAsked && rested && countOf(answers)}</span>{' '}
        <a href={href('a-z/')}>from A to Z</a>
      </p>
    </>
  );
}

const countOf = (answers: readonly Entry[]) =>
  answers.length === 0 ? 'no answer' : answers.length === 1 ? '1 answer' : `${answers.length} answers`;

/** What was read otherwise than it was typed, and what was passed over. */
function HowRead({ found: { readAs, unknown, answers } }: { found: Found }) {
  if (answers.length === 0 || readAs.length + unknown.length === 0) return null;
  return (
    <p class="how-read">
      {readAs.map(({ typed, meant }) => (
        <span key={typed}>
          “{typed}” read as <b>{meant}</b>.{' '}
        </span>
      ))}
      {unknown.length > 0 && <>Answered without “{unknown.join('”, “')}”: no word of this site.</>}
    </p>
  );
}
