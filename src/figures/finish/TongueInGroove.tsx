/**
 * A lid's tongue in its groove, cut across and so much enlarged that the play above it is seen; of the thickness of the
 * tongue a piece is left out. How much of the play films on its two faces take is marked, and then drawn.
 */
import { practice } from '../../box/core/practice.ts';
import { playUnderFilm } from '../../calc/finish/finish-film.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { FineScale } from './FineScale.tsx';

/** What can be marked, mm. */
export const filmRange = { low: 0, high: 0.4 } as const;
/** Drawing units for a mm. */
const enlarged = 300;
const [outer, root, mouth, end] = [14, 84, 196, 268] as const;
/** Upper and lower side of the groove's lips, and upper side of the tongue as it lies. */
const [top, roof, lies, floor, foot] = [34, 66, 66 + practice.lidSlip * enlarged, 246, 278];
export const filmFrame: GuessFrame = {
  width: 350,
  height: 296,
  from: [end - 36, lies],
  to: [end - 36, lies - filmRange.high * enlarged],
};

export interface Film {
  readonly f: number;
  readonly n: number;
  readonly h: number;
}

/** The same with a film of any kind: faces with a film, coats, and one coat, mm. */
export function TongueInGroove({
  film,
  system,
  mark,
}: {
  film: Film | undefined;
  system?: UnitSystem;
  mark?: number | undefined;
}) {
  const play = practice.lidSlip;
  const left = film ? playUnderFilm.compute({ p: play, ...film }) : play;
  const jams = left < 0;
  // Half of the films lie under the tongue and lift it, the other half above it. What finds no room is not drawn.
  const build = film ? Math.min(film.f * film.n * film.h, play) * enlarged : 0;
  const [upper, lower] = [lies - build / 2, floor - build / 2];
  const gap = lies - build;
  return (
    <Drawing
      view={[0, 0, filmFrame.width, filmFrame.height]}
      title="A lid’s tongue in its groove, cut across"
      description={`The groove is ${said(play, 'length', { as: 'fine' })} wider than the tongue is thick; drawn ${enlarged} times as large, a piece of the tongue left out. ${
        !film
          ? 'The films are not drawn yet.'
          : jams
            ? `The films need ${said(-left, 'length', { as: 'fine' })} more than that: it jams.`
            : `With its films the tongue has ${said(left, 'length', { as: 'fine' })} of play left.`
      }`}
    >
      <path class="end" d={`M${outer} ${top}H${mouth}V${roof}H${root}V${floor}H${mouth}V${foot}H${outer}Z`} />
      <g class={film ? 'arrives' : undefined}>
        {film && (
          <>
            <rect
              class={jams ? 'wood jammed' : 'thing'}
              x={root + 8}
              y={gap}
              width={end - root - 8}
              height={build / 2}
            />
            <rect
              class={jams ? 'wood jammed' : 'thing'}
              x={root + 8}
              y={lower}
              width={end - root - 8}
              height={build / 2}
            />
          </>
        )}
        <path class="wood" d={`M${root + 8} ${upper}H${end}V${upper + 36}H${root + 8}Z`} />
        <path class="wood" d={`M${root + 8} ${lower - 36}H${end}V${lower}H${root + 8}Z`} />
        <path
          class="hidden-line"
          d={`M${end - 20} ${upper + 36}V${lower - 36}M${root + 28} ${upper + 36}V${lower - 36}`}
        />
        {build > 36 && !jams && (
          <Label x={(root + end) / 2 - 40} y={(gap + upper) / 2}>
            film
          </Label>
        )}
        <Label class="on-lid" x={(root + end) / 2 - 40} y={lower - 18}>
          tongue
        </Label>
      </g>
      {mark !== undefined && (
        <rect
          class="ghost bare"
          x={root + 8}
          y={lies - mark * enlarged}
          width={end - root - 8}
          height={mark * enlarged}
        />
      )}
      {jams ? (
        <Label class="warning" x={(root + mouth) / 2 + 8} y={top - 14}>
          it jams
        </Label>
      ) : (
        <NumberLabel
          class="on-lines"
          x={(root + mouth) / 2 + 8}
          y={top - 14}
          value={left}
          kind="length"
          as="exact"
          before={film ? 'play left ' : 'play '}
        />
      )}
      {!jams && (
        <path
          class="thin"
          d={`M${mouth - 24} ${roof}V${gap}`}
          marker-start="url(#arrow)"
          marker-end="url(#arrow)"
        />
      )}
      {system && (
        <FineScale
          x={end + 22}
          from={lies}
          to={lies - filmRange.high * enlarged}
          length={filmRange.high}
          system={system}
        />
      )}
    </Drawing>
  );
}
