/** The wall of a lift-off lid beside its liner, enlarged: what three coats of finish leave of the room between them is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { filmBuild } from '../../calc/finish/finish-film.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** Room that can be marked, mm. */
export const roomRange = { low: 0, high: 1.6 } as const;
const [top, foot] = [30, 150] as const;
export const roomFrame: GuessFrame = { width: 350, height: 214, from: [84, 90], to: [330, 90] };
const place = (mm: number) => placeIn(roomFrame, roomRange, mm)[0];

/** Three brushed coats, each 0.03 mm dry: common practice. Both faces of the fit get them. */
const coats = { n: 3, h: 0.03 } as const;
const film = filmBuild.compute({ f: 1, ...coats });
/** What they leave of the room at one side, mm; nothing where they fill it. */
export const roomLeft = (v: Values): number => Math.max(0, v.lidRoom - filmBuild.compute({ f: 2, ...coats }));

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function RoomGuess({ values: v, system, mark, open }: Props) {
  const left = roomLeft(v);
  const wall = place(Math.min(v.lidRoom, roomRange.high));
  const thick = place(film) - place(0);
  const fine = (mm: number) => said(mm, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, roomFrame.width, roomFrame.height]}
      title="The lid beside its liner"
      description={`Bare, the room between them is ${fine(v.lidRoom)}. ${
        open ? `Three coats on both leave ${fine(left)}.` : 'What three coats on both leave is not drawn yet.'
      }`}
    >
      <rect class="wood-end" x="2" y={top} width={place(0) - 2} height={foot - top} />
      <rect class="wood" x={wall} y={top} width={348 - wall} height={foot - top} />
      {open && (
        <g class="arrives">
          <rect
            class="water"
            x={place(0)}
            y={top}
            width={Math.min(thick, (wall - place(0)) / 2)}
            height={foot - top}
          />
          <rect
            class="water"
            x={wall - Math.min(thick, (wall - place(0)) / 2)}
            y={top}
            width={Math.min(thick, (wall - place(0)) / 2)}
            height={foot - top}
          />
        </g>
      )}
      {mark !== undefined && (
        <path
          class="ghost bare"
          d={`M${place(0)} ${top - 6}V${foot + 6}M${place(mark)} ${top - 6}V${foot + 6}`}
        />
      )}
      <Label class="on-wood" x={12} y={(top + foot) / 2} anchor="start">
        liner
      </Label>
      <Label class="on-lid" x={340} y={(top + foot) / 2} anchor="end">
        lid
      </Label>
      <NumberLabel x={4} y={14} anchor="start" value={v.lidRoom} kind="length" as="exact" before="bare: " />
      {open && (
        <NumberLabel x={346} y={14} anchor="end" value={left} kind="length" as="exact" before="finished: " />
      )}
      <RuleScale
        from={[place(0), foot + 12]}
        to={[place(roomRange.high), foot + 12]}
        length={roomRange.high}
        system={system}
      />
    </Drawing>
  );
}
