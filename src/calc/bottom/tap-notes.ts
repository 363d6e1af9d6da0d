/**
 * The notes in one tap: the lowest dozen of the panel, each with what the knuckle starts of it and how long it rings.
 *
 *   start = sin(pi m x)^2 sin(pi n y)^2 / (rho h a b / 4)      velocity of the tapped place for a push of 1 N s
 *
 * x and y are the place as shares of length and width; a note moves a quarter of the panel's mass. Range and symbols as
 * in modes.ts and tap.ts. Cremer, Heckl and Petersson, Structure-Borne Sound.
 */
import type { Panel } from './bottom.ts';
import { lowestNotes, type Mode } from './modes.ts';
import { knuckleReach, lossOfWood, ringTime } from './tap.ts';

/** One note of a tapped panel. */
export interface TapNote extends Mode {
  /** Velocity that a push of no length would give the tapped point, mm/s for 1 N s. */
  readonly start: number;
  /** Velocity after the knuckle has left, same unit. */
  readonly swing: number;
  /** Time until a thousandth is left, s. */
  readonly ring: number;
}

/** Where the panel is tapped, as a share of its length and of its width: near the middle, so that few notes stand still. */
export const tapped = 0.4;

/** The lowest dozen notes after a tap. @param contact how long the knuckle stays, ms */
export function tapNotes(panel: Panel, contact: number, loss = lossOfWood): readonly TapNote[] {
  // A note moves a quarter of the panel's mass, in kg.
  const mass = (panel.rho * panel.h * panel.a * panel.b * 1e-9) / 4;
  return lowestNotes(panel).map((mode) => {
    const shape = Math.sin(Math.PI * mode.m * tapped) * Math.sin(Math.PI * mode.n * tapped);
    const start = (1000 * shape ** 2) / mass;
    return {
      ...mode,
      start,
      swing: (start * knuckleReach.compute({ f: mode.f, T: contact })) / 100,
      ring: ringTime.compute({ f: mode.f, eta: loss }),
    };
  });
}
