/** The first line of an answer: my number large, with the mark of the rule beside it where it is a small one; under it the usual range. */
import { numberAndMark } from '../kit/told.tsx';
import type { BothTexts } from './entry.ts';
import type { Shown } from './shown.ts';
import { textsOf } from './texts.ts';

/** "0.039 in, a strong 1/32": the number, and what a rule shows of it. */
function Large({ text }: { text: string }) {
  const [number, mark] = numberAndMark(text);
  return (
    <>
      <b>{number}</b>
      {mark && <small>, {mark}</small>}
    </>
  );
}

function LargeInBoth({ texts: { mm, inch } }: { texts: BothTexts }) {
  if (mm === inch) return <Large text={mm} />;
  return (
    <>
      <span class="mm">
        <Large text={mm} />
      </span>
      <span class="inch">
        <Large text={inch} />
      </span>
    </>
  );
}

/** A text with lengths, as each reader has it. */
function Both({ mm, inch }: BothTexts) {
  if (mm === inch) return <>{mm}</>;
  return (
    <>
      <span class="mm">{mm}</span>
      <span class="inch">{inch}</span>
    </>
  );
}

export function AnswerNumber({ id, shown: { number, usual } }: { id: string; shown: Shown }) {
  if (!number && !usual) return null;
  return (
    <p class="answer-number" id={id}>
      {number && <LargeInBoth texts={textsOf(number)} />}{' '}
      {usual && (
        <span class={number ? 'usual-range' : 'usual-alone'}>
          {number && 'usual '}
          <Both {...usual} />
          {!number && <small> usual</small>}
        </span>
      )}
    </p>
  );
}
