/**
 * A year put to a lid that lies open to it on both faces, as one wave between the driest and the dampest air of the box:
 * what three coats of varnish leave of the swing that the bare lid makes, and how much later it comes.
 */
import { waveKept } from '../../../calc/air/diffusion-series.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import { type Finish, finishes, ROOM_SURFACE } from '../../../calc/finish/finish.ts';
import { diffusionOf } from '../air/wait.ts';
import type { MovementValues } from '../movement/results.ts';
import { behindFilm } from './lid-bows.ts';

/** Three coats of urethane varnish, the finish that guesses are about. */
export const varnish: Finish = finishes.find(
  ({ name, coats }) => name === 'Urethane varnish' && coats === 3,
)!;

/** Days. */
export const YEAR = 365;

export interface VarnishedYear {
  /** Swing of the width of the bare lid over the year, mm; NaN where the wood has no movement figure. */
  readonly bareSwing: number;
  /** Swing of the varnished lid as a share of the bare one's, %. */
  readonly left: number;
  /** By how many days its wave comes after that of the bare lid. */
  readonly later: number;
}

/** The box's lid, bare and varnished on both faces; a refusal where its wood has no density. */
export function varnishedYear(v: MovementValues): VarnishedYear | Refused {
  const diffusion = diffusionOf(v, (v.moistureDry + v.moistureDamp) / 2);
  if (isRefused(diffusion)) return diffusion;
  const wave = (surface: number) =>
    waveKept({ thickness: v.lidThickness, diffusion: diffusion.middle, surface }, YEAR);
  const [bare, varnished] = [wave(ROOM_SURFACE), wave(behindFilm(varnish.resistance))];
  if (isRefused(bare)) return bare;
  if (isRefused(varnished)) return varnished;
  return {
    bareSwing: v.movementUp * v.lidWidth * (v.moistureDamp - v.moistureDry) * bare.kept,
    left: (100 * varnished.kept) / bare.kept,
    later: varnished.lag - bare.lag,
  };
}
