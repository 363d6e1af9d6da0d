/** A piece seen through its thickness: what `diffusion.ts` takes and gives. mm, mm²/day, mm/day, % MC, days. */
import { firstRefusal, type Refused } from '../core/refusal.ts';

/** Air film on wood in a room, mm/day: S_air = 1e-7 m/s. Measured values run from 1e-8 to 1e-7 (from memory, not seen). */
export const ROOM_SURFACE = 8.64;

/** One face of the piece and the air on its side. */
export interface Face {
  /** Surface coefficient S, mm/day, air film and finish together. 0 seals the face; `Infinity` puts it at M_air at once. */
  readonly surface: number;
  /** Equilibrium moisture content (%) of the air at this face, by day. */
  readonly moisture: (day: number) => number;
}

/** A piece seen through its thickness. The front face is the show face; for a lid, the outside. */
export interface Slab {
  /** mm, 0.5 to 100 */
  readonly thickness: number;
  /** mm²/day, 0.1 to 100 */
  readonly diffusion: number;
  readonly front: Face;
  readonly back: Face;
}

/** Moisture by day: index 0 is the start, index n is n days later. All in % MC. */
export interface Course {
  readonly mean: Float64Array;
  /** Moisture in the wood at the very face. */
  readonly front: Float64Array;
  readonly back: Float64Array;
  /** Front minus back of the straight line that bends the piece as much as the true profile does. */
  readonly difference: Float64Array;
  /** Water gained through each face since the start, as % MC times mm. */
  readonly gained: { readonly front: number; readonly back: number };
  /** Moisture in each cell at the end, front to back. */
  readonly profile: Float64Array;
}

/** How finely to cut time and thickness. */
export interface Steps {
  /** Cells through the thickness, 4 to 400. */
  readonly cells?: number;
  readonly perDay?: number;
}

/** Refuses what the model cannot take: no thickness, no diffusion, a negative surface. */
export function refuseSlab({ thickness, diffusion, front, back }: Slab): Refused | undefined {
  for (const { surface } of [front, back]) {
    if (!(surface >= 0)) return { refused: `A surface coefficient of ${surface} mm/day has no meaning.` };
  }
  return firstRefusal(
    ['thickness', thickness, 0.5, 100, ' mm'],
    ['diffusion coefficient', diffusion, 0.1, 100, ' mm²/day'],
  );
}

/**
 * The inside face of a box that stays shut: it counts as sealed.
 * A liter of saturated air at 20 °C holds 17 mg of water; one percent of a 100 × 100 × 6 mm lid is some 300 mg. So the
 * air inside takes the moisture of the wood, not the wood that of the air, and hardly any water crosses that face.
 */
export const SHUT_INSIDE: Face = { surface: 0, moisture: () => 0 };
