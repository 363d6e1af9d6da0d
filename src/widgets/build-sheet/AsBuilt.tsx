/** On paper: what was measured when the box was done, and in its first dry and damp season. */
import type { Design } from '../../box/design/design.ts';

const when = ['when finished', 'first dry season', 'first damp season'] as const;

export function AsBuilt({ design: { box, bottom } }: { design: Design }) {
  const rows = [
    'date',
    'humidity of the room, %',
    ...(box.kind === 'sliding' ? ['play beside the lid, both sides'] : ['room around the lid']),
    ...(bottom && !bottom.glued ? ['gap beside the bottom, each side'] : []),
    'diagonals, top',
    'rocks on a flat plate by',
    'notes for the next one',
  ];
  return (
    <section class="as-built paper-only">
      <h2>As built</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">measured</th>
            {when.map((one) => (
              <th key={one} scope="col">
                {one}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row}>
              <th scope="row">{row}</th>
              {when.map((one) => (
                <td key={one} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
