/** What a task gives: its numbers, the drawing and the table to read from, and the question. */
import type { ComponentType } from 'preact';
import type { Task } from '../../exercises/core/exercise.ts';
import type { GivenProps } from '../../figures/parts/given.ts';

/** A drawing of what is given, from the drawn numbers; it holds no answer. */
export type GivenFigure = ComponentType<GivenProps>;

export function GivenNumbers({ task, figure: Figure }: { task: Task; figure?: GivenFigure | undefined }) {
  const { given, table, question, values, system } = task;
  return (
    <>
      <dl class="given">
        {given.map(({ label, text }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      {Figure && (
        <div class="given-figure">
          <Figure values={values} system={system} />
        </div>
      )}
      {table && (
        <details class="air-table">
          <summary>table: from humidity to moisture</summary>
          <table>
            <caption>{table.title}</caption>
            <tbody>
              {table.rows.map(([from, to]) => (
                <tr key={from}>
                  <th scope="row">{from}</th>
                  <td>{to}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      )}
      <p class="question">{question}</p>
    </>
  );
}
