/** Set-ups of the liner of a lift-off lid: its four strips, and what is planed off them above the rim. */

import { gap, say, sizeOf } from './say.ts';
import type { SetUp } from './set-ups.ts';
import type { Planned } from './step.ts';

export function linerSetUps({ parts, box }: Planned): SetUp[] {
  const long = parts.find(({ name }) => name === 'liner-left');
  const short = parts.find(({ name }) => name === 'liner-front');
  if (!long || !short) return [];
  return [
    {
      id: 'liner-lengths',
      cut: say`liner to length, ${sizeOf(long, 'thickness')} thick`,
      settings: [
        { what: 'long strips', value: sizeOf(long, 'length') },
        { what: 'short strips', value: sizeOf(short, 'length') },
        { what: 'saw tilt', value: { value: 45, kind: 'angle', digits: 1 } },
      ],
      note: say`Point to point. Fit them to the box as it came out, not to the drawing.`,
    },
    {
      id: 'liner',
      cut: say`liner, above the rim`,
      settings: [{ what: 'planed thinner by', value: gap(box.lidRoom) }],
      note: say`Only the part that stands up; after the finish has dried.`,
    },
  ];
}
