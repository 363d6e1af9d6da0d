/** What one learner gets on paper: the head with name and date, and each exercise with lines to write on and its code. */
import type { Asked, Task } from '../../../exercises/core/exercise.ts';
import { choiceAt } from '../../../exercises/core/key-notes.ts';
import { askedOf } from '../../../exercises/core/task.ts';
import { nearness } from '../../../exercises/core/written.ts';
import { fieldUnit, type UnitSystem } from '../../../units/index.ts';
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

/** The table lies on its side: it takes two lines. */
const AirTable = ({ table: { title, rows } }: { table: NonNullable<Task['table']> }) => (
  <table class="sheet-air">
    <caption>{title}</caption>
    <tbody>
      {([0, 1] as const).map((side) => (
        <tr key={side}>
          {rows.map((row) => (
            <td key={row[0]}>{row[side]}</td>
          ))}
        </tr>
      ))}
    </tbody>
  </table>
);

const Answer = ({ asked, system }: { asked: Asked; system: UnitSystem }) =>
  asked.type === 'number' ? (
    <p>
      {asked.label} <i class="sheet-line" /> {fieldUnit(asked.print.kind, system)}{' '}
      {asked.within > 0 && <small>right within {nearness(asked, system)}</small>}
    </p>
  ) : (
    <div class="sheet-choice">
      {asked.label}, mark one:
      <ul>
        {asked.options.map(({ id, text }, option) => (
          <li key={id}>
            <i class="sheet-box" aria-hidden="true" /> {choiceAt(option)} {text}
          </li>
        ))}
      </ul>
    </div>
  );

interface Props {
  sheet: Sheet;
  /** Place of the task on the sheet, from 0. */
  at: number;
  /** Drawn only to be measured: the room of the code is enough. */
  measured?: boolean;
}

export function SheetTaskBlock({ sheet, at, measured }: Props) {
  const { exercise, task, code } = sheet.tasks[at]!;
  const { className, number } = sheet.learner;
  const { table, system } = task;
  // A table that several exercises read from stands once, with the first of them.
  const first = table && sheet.tasks.findIndex((one) => one.task.table?.title === table.title);
  const words = `${className} · ${number} · ${exercise.id}`;
  return (
    <div class="sheet-task" data-block>
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
        {table && first === at && <AirTable table={table} />}
        <p class="sheet-question">
          {task.question}
          {first !== undefined && first < at && <small> The table stands with exercise {first + 1}.</small>}
        </p>
        <Lines of={Math.min(4, Math.max(2, task.lines.length))} />
        <div class="sheet-answers">
          {askedOf(task).map(({ gives }) => (
            <Answer key={gives.label} asked={gives} system={system} />
          ))}
        </div>
        {task.reason && (
          <>
            <p class="sheet-reason">{task.reason}</p>
            <Lines of={2} />
          </>
        )}
      </div>
      <div class="sheet-code">
        {code &&
          (measured ? (
            <div class="qr" />
          ) : (
            <QrCode code={code} label={`QR code of this exercise: ${words}`} />
          ))}
        <p>{words}</p>
      </div>
    </div>
  );
}
