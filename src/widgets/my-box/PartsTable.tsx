/** The cut list: every part with its finished and rough size. */
import type { Design } from '../../box/design.ts';
import type { Size } from '../../box/parts/part.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';

/** Length × width × thickness; panels and tongues are rounded down, so that nothing is cut too large to fit. */
function SizeOf({ size, round }: { size: Size; round: 'up' | 'down' | 'nearest' }) {
  return (
    <>
      {(['length', 'width', 'thickness'] as const).map((side, index) => (
        <span key={side}>
          {index > 0 && ' × '}
          <Quantity value={size[side]} kind="length" round={round} denominator={64} />
        </span>
      ))}
    </>
  );
}

const panels = ['bottom', 'lid'];

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
            <tr key={part.name}>
              <th scope="row">
                {part.label}
                {part.material === 'plywood' && <small> plywood</small>}
                {part.note && <small> {part.note}</small>}
              </th>
              <td>{part.count}</td>
              <td>
                <SizeOf size={part.finished} round={panels.includes(part.name) ? 'down' : 'nearest'} />
              </td>
              <td>
                <SizeOf size={part.rough} round="up" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
