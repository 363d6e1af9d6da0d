/** The keys of one exercise, or as much of them as a page holds: learner by what is asked, and the words of the slips. */
import type { KeyNote } from '../../../exercises/core/key-notes.ts';
import type { KeyCell, KeyTable } from '../../../exercises/core/key-table.ts';
import type { KeyPiece } from './paper.ts';

const Cell = ({ cell: { answer, choice, slips } }: { cell: KeyCell }) => (
  <>
    <td class="key">{choice || answer}</td>
    {slips.map((value, at) => (
      <td key={at}>{value || '–'}</td>
    ))}
  </>
);

const Note = ({ note: { letter, asked, chosen, says } }: { note: KeyNote }) => (
  <p>
    <b>{letter}</b> {chosen && `${asked}: ${chosen}. `}
    {chosen && says.length > 0 && <i>Where it is wrong: </i>}
    {says.join(' Or: ')}
  </p>
);

interface Props {
  table: KeyTable;
  /** Which rows and notes; the whole of it where it is not said. */
  piece?: KeyPiece;
}

export function KeySheet({ table, piece }: Props) {
  const { title, columns, rows, notes, reason } = table;
  const [from, to] = piece?.rows ?? [0, rows.length];
  const [first, last] = piece?.notes ?? [0, notes.length];
  const goesOn = from > 0 || first > 0;
  return (
    <div class="key-sheet" data-keys>
      <h3>
        {title} <small>{table.exercise}</small>
        {goesOn && ', continued'}
      </h3>
      {to > from && (
        <section class="scroll" aria-label={`Keys: ${title}`} tabIndex={0}>
          <table>
            <thead>
              <tr>
                <th scope="col" rowSpan={2}>
                  no.
                </th>
                {columns.map(({ label, slips, unit }) => (
                  <th key={label} scope="colgroup" colSpan={1 + slips.length} class="key">
                    {label}
                    {unit && slips.length > 0 && <small> ({unit})</small>}
                  </th>
                ))}
              </tr>
              <tr>
                {columns.map(({ label, within, slips }) => [
                  <th key={label} scope="col" class="key">
                    key{within && <small> ± {within}</small>}
                  </th>,
                  ...slips.map((letter) => (
                    <th key={`${label} ${letter}`} scope="col">
                      {letter}
                    </th>
                  )),
                ])}
              </tr>
            </thead>
            <tbody>
              {rows.slice(from, to).map(({ number, cells }) => (
                <tr key={number}>
                  <th scope="row">{number}</th>
                  {cells.map((cell, at) => (
                    <Cell key={at} cell={cell} />
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      <div class="key-notes">
        {notes.slice(first, last).map((note) => (
          <Note key={`${note.letter} ${note.asked} ${note.chosen} ${note.says[0]}`} note={note} />
        ))}
      </div>
      {reason && last === notes.length && <p class="key-reason">The reason in words is for you to judge.</p>}
    </div>
  );
}

/** How the keys are read, once. */
export const KeyHead = ({ className, learners }: { className: string; learners: number }) => (
  <div class="sheet-head" data-block>
    <h2>
      Keys, class {className}, numbers 1 to {learners}
    </h2>
    <p class="sheet-how">
      An answer is right within what stands beside the word key. A column with a letter holds what a usual
      slip gives; which step went wrong stands below the table. A dash: for this learner the slip gives what
      is right. Apart from these look for the other unit, and for a decimal point that is off by one place.
    </p>
  </div>
);
