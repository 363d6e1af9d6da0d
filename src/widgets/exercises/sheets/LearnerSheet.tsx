/** What one learner gets on paper: the head with name and date, and each exercise with lines to write on and its code. */
import { choiceAt } from '../../../exercises/core/key-table.ts';
import { askedOf } from '../../../exercises/core/task.ts';
import { nearness } from '../../../exercises/core/written.ts';
import { fieldUnit } from '../../../units/index.ts';
import { QrCode } from '../../kit/QrCode.tsx';
import type { Made, Sheet } from './make.ts';

export function SheetHead({ made: { site }, sheet: { learner } }: { made: Made; sheet: Sheet }) {
  return (
    <div class="sheet-head" data-block>
      <h2>
        Class {learner.className}, number {learner.number}
      </h2>
      <p class="sheet-who">
        <span>
          Name <i class="sheet-line" />
        </span>
        <span>
          Date <i class="sheet-line short" />
        </span>
      </p>
      <p class="sheet-how">
        These numbers are yours; your neighbor has others. Write down each step.{' '}
        {site
          ? `To check an answer, scan the code beside it, or open ${site} and give your class and number.`
          : 'To check an answer on a screen, open Exercises there, and give your class and number.'}
      </p>
    </div>
  );
}

const Lines = ({ of }: { of: number }) => (
  <div class="sheet-lines" aria-hidden="true">
    {Array.from({ length: of }, (_, at) => (
      <i key={at} />
    ))}
  </div>
);

/** @param at place of the task on the sheet, from 0 */
export function SheetTaskBlock({ sheet, at }: { sheet: Sheet; at: number }) {
  const { exercise, task, code } = sheet.tasks[at]!;
  const { className, number } = sheet.learner;
  const { table, system } = task;
  // A table that several exercises read from stands once, with the first of them.
  const first = table && sheet.tasks.findIndex((one) => one.task.table?.title === table.title);
  const words = `${className} · ${number} · ${exercise.id}`;
  return (
    <div class="sheet-task" data-block>
      <div class="sheet-top">
        <div>
          <h3>
            {at + 1}. {exercise.title}
          </h3>
          <dl>
            {task.given.map(({ label, text }) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>{text}</dd>
              </div>
            ))}
          </dl>
          {first !== undefined && first < at && (
            <p class="sheet-small">The table stands with exercise {first + 1}.</p>
          )}
        </div>
        <div class="sheet-code">
          {code && <QrCode code={code} label={`QR code of this exercise: ${words}`} />}
          <p>{words}</p>
        </div>
      </div>
      {table && first === at && (
        <table class="sheet-air">
          <caption>{table.title}</caption>
          <tbody>
            {([0, 1] as const).map((side) => (
              <tr key={side}>
                {table.rows.map((row) => (
                  <td key={row[0]}>{row[side]}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p class="sheet-question">{task.question}</p>
      <Lines of={Math.min(5, Math.max(2, task.lines.length))} />
      {askedOf(task).map(({ gives }) =>
        gives.type === 'number' ? (
          <p class="sheet-answer" key={gives.label}>
            {gives.label} <i class="sheet-line" /> {fieldUnit(gives.print.kind, system)}{' '}
            {gives.within > 0 && <small>right within {nearness(gives, system)}</small>}
          </p>
        ) : (
          <div class="sheet-answer" key={gives.label}>
            {gives.label}, mark one:
            <ul>
              {gives.options.map(({ id, text }, option) => (
                <li key={id}>
                  <i class="sheet-box" aria-hidden="true" /> {choiceAt(option)} {text}
                </li>
              ))}
            </ul>
          </div>
        ),
      )}
      {task.reason && (
        <>
          <p class="sheet-answer">{task.reason}</p>
          <Lines of={2} />
        </>
      )}
    </div>
  );
}
