/** The cut list: every part with its finished and rough size. */
import type { Design } from '../../box/design/design.ts';
import type { Part } from '../../box/design/part.ts';
import { shownSize, sides } from '../../box/design/shown-size.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';

/** Length × width × thickness. */
function SizeOf({ part, state }: { part: Part; state: 'finished' | 'rough' }) {
  return (
    <>
      {sides.map((side, index) => (
        <span key={side}>
          {index > 0 && ' × '}
          <Quantity {...shownSize(part, state, side)} />
        </span>
      ))}
    </>
  );
}

export function PartsTable({ design }: { design: Design }) {
  return (
    <section class="scroll" aria-label="Cut list" tabIndex={0}>
      <table class="cut-list">
        <thead>
          <tr>
            <th scope="col">part</th>
            <th scope="col">how many</th>
            <th scope="col">finished: length, width, thickness</th>
            <th scope="col">rough</th>
          </tr>
        </thead>
        <tbody>
          {design.parts.map((part) => (
            <tr key={part.label}>
              <th scope="row">
                {part.label}
                {part.material === 'plywood' && <small> plywood</small>}
                {part.note && <small> {part.note}</small>}
              </th>
              <td>{part.count}</td>
              <td>
                <SizeOf part={part} state="finished" />
              </td>
              <td>
                <SizeOf part={part} state="rough" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
