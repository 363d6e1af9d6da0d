/** A lid seen on its end after its air has turned damp: open or on a shut box, bare or varnished, and how it bows. */
import { diffusionOf } from '../../box/subjects/air/wait.ts';
import { behindFilm, faceDifferences, farthest, type LidWay } from '../../box/subjects/finish/lid-bows.ts';
import { varnish } from '../../box/subjects/finish/varnished-year.ts';
import type { MovementValues } from '../../box/subjects/movement/results.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { ROOM_SURFACE } from '../../calc/finish/finish.ts';
import { cupFromFaces } from '../../calc/movement/cup-faces.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';

const film = behindFilm(varnish.resistance);
/** The ways that can be picked. */
const ways: Readonly<Record<string, LidWay>> = {
  both: { word: 'open, varnished on both faces', outside: film, inside: film },
  outer: { word: 'open, varnished on its outer face', outside: film, inside: ROOM_SURFACE },
  shutBare: { word: 'bare, on a shut box', outside: ROOM_SURFACE },
  shutOuter: { word: 'varnished outside, on a shut box', outside: film },
};

/** How many times too large a bow is drawn. */
export const bowTimes = 10;

let last: { key: string; bows: Readonly<Record<string, number>> } | undefined;
/** Bow at its worst, mm, above zero where the lid crowns outward; NaN where the wood has no figures. */
export function bowsOf(v: MovementValues): Readonly<Record<string, number>> {
  const key = [
    v.lidThickness,
    v.specificGravity,
    v.movementUp,
    v.lidWidth,
    v.moistureToday,
    v.moistureDamp,
  ].join();
  if (last?.key === key) return last.bows;
  const D = diffusionOf(v, (v.moistureToday + v.moistureDamp) / 2);
  const found = isRefused(D)
    ? D
    : faceDifferences(
        Object.values(ways),
        { thickness: v.lidThickness, diffusion: D.middle },
        { from: v.moistureToday, to: v.moistureDamp },
      );
  const bow = (at: number) =>
    isRefused(found)
      ? Number.NaN
      : cupFromFaces.compute({
          C: v.movementUp,
          dM: farthest(found.points[at]!),
          w: v.lidWidth,
          T: v.lidThickness,
        });
  const bows = Object.fromEntries(Object.keys(ways).map((way, at) => [way, bow(at)]));
  last = { key, bows };
  return bows;
}

/** The way in which the lid bows most. */
export function mostBowed(v: MovementValues): string {
  const bows = bowsOf(v);
  return Object.keys(ways).reduce((most, way) => (Math.abs(bows[way]!) > Math.abs(bows[most]!) ? way : most));
}

const sheet = { width: 150, height: 96, left: 10, length: 130, seat: 46 } as const;

interface Props {
  values: MovementValues;
  option: string;
  open: boolean;
}

export function LidBows({ values: v, option, open }: Props) {
  const way = ways[option]!;
  const { left, length, seat } = sheet;
  const [middle, right] = [left + length / 2, left + length];
  const scale = length / v.lidWidth;
  const high = v.lidThickness * scale;
  const bow = bowsOf(v)[option]!;
  // Up in the drawing is outward; the control point of the curve stands twice as far out as the curve goes.
  const out = open && Number.isFinite(bow) ? -2 * bow * bowTimes * scale : 0;
  const face = (y: number) => `M${left} ${y}Q${middle} ${y + out} ${right} ${y}`;
  const shut = way.inside === undefined;
  return (
    <Drawing
      view={[0, 0, sheet.width, sheet.height]}
      title={`A lid ${way.word}`}
      description={
        open
          ? `It bows by ${said(Math.abs(bow), 'length', { as: 'fine' })}, drawn ${bowTimes} times too far.`
          : 'Whether it bows is not drawn yet.'
      }
    >
      {shut && (
        <path class="wood-end" d={`M${left + 3} ${seat}v40h${length - 6}v-40h-9v31h${24 - length}v-31z`} />
      )}
      <path
        class={open ? 'wood arrives' : 'wood'}
        d={`${face(seat - high)}V${seat}Q${middle} ${seat + out} ${left} ${seat}z`}
      />
      {way.outside === film && <path class="film" d={face(seat - high - 1)} />}
      {way.inside === film && <path class="film" d={face(seat + 1)} />}
    </Drawing>
  );
}
