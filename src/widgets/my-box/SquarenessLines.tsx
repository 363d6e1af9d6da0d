/** What the reader's errors and measurements come to, each with its reason. */
import { sayOf } from '../../box/core/result.ts';
import type { Design } from '../../box/design/design.ts';
import { square } from '../../box/subjects/square/subject.ts';
import type { UnitSystem } from '../../units/index.ts';
import { RelationLine } from '../kit/ResultLine.tsx';

export function SquarenessLines({ design: { values }, units }: { design: Design; units: UnitSystem }) {
  return (
    <div>
      {Object.entries(square.results)
        .filter(([, row]) => row.when?.(values) ?? true)
        .map(([name, row]) => (
          <RelationLine key={name} {...sayOf(row)} working={row.work(values)} units={units} />
        ))}
    </div>
  );
}
