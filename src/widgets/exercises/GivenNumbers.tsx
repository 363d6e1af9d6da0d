/** What a task gives: its numbers, the table to read from, and the question. */
import type { Task } from '../../exercises/core/exercise.ts';

export function GivenNumbers({ task }: { task: Task }) {
  const { given, table, question } = task;
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
