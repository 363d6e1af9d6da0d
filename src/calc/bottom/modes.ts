/**
 * The notes of a bottom panel: the ways in which it can swing, each with a frequency of its own.
 *
 *   f_mn = (pi/2) sqrt((D_x m^4/a^4 + 2 B m^2 n^2/(a^2 b^2) + D_y n^4/b^4) / (rho h)),  edges simply carried
 *   f    = (1/2 pi) sqrt((4.730^4 (D_x/a^4 + D_y/b^4) + 2 (12.30)^2 B/(a^2 b^2)) / (rho h)),  edges held fast
 *
 * m and n count the half waves along and across; D_x, D_y, B and the other symbols as in bottom.ts. A bottom in its
 * groove lies between the two. The numbers of the second are those of a bar held at both ends, whose shape the panel is
 * given along and across (Rayleigh): the true note is a little lower, by less than one percent.
 *
 * Range: thin plates, h below about 1/20 of the length of a half wave, small swings.
 * Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, ch. 11; Leissa, Vibration of Plates, ch. 4 and 9.
 */
import { relation } from '../core/relation.ts';
import { type Panel, panel } from './bottom.ts';

const halfWaves = { unit: '1', range: [1, 6], whole: true } as const;

/** Any note of a panel carried on four edges, Hz. */
export const noteOfPanel = relation({
  id: 'tap-note',
  title: 'A note of the bottom',
  result: { symbol: 'f', name: 'frequency', unit: 'Hz' },
  inputs: {
    ...panel,
    m: { ...halfWaves, name: 'half waves along the grain' },
    n: { ...halfWaves, name: 'half waves across it' },
  },
  rangesGiven: ({ a, b, m, n }) => ({ h: [0, Math.min(a / m, b / n) / 10] }),
  expression:
    'pi h / 2 * sqrt((E_x m^4 / a^4 + E_y n^4 / b^4 + 2 m^2 n^2 (nu E_y + 2 G * (1 - nu^2 E_y / E_x)) / (a^2 b^2)) / (12 rho * (1 - nu^2 E_y / E_x)))',
  compute: ({ h, a, b, rho, E_x, E_y, G, nu, m, n }) => {
    const held = 1 - (nu ** 2 * E_y) / E_x;
    const both =
      (E_x * m ** 4) / a ** 4 +
      (E_y * n ** 4) / b ** 4 +
      (2 * m ** 2 * n ** 2 * (nu * E_y + 2 * G * held)) / (a ** 2 * b ** 2);
    // mm, MPa and kg/m³ meet in 1e6.
    return ((Math.PI * h) / 2) * Math.sqrt(both / (12 * rho * held)) * 1e6;
  },
  evidence: 'derived',
  source: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, ch. 11.',
  limits:
    'Four edges simply carried; half waves at least 20 thicknesses long, beyond which the notes rise less.',
});

/** Lowest note of a panel whose four edges can neither move nor turn, Hz: the upper bound for a bottom in a groove. */
export const lowestNoteHeld = relation({
  id: 'tap-note-held',
  title: 'Lowest note, edges held fast',
  result: { symbol: 'f', name: 'frequency', unit: 'Hz' },
  inputs: panel,
  rangesGiven: ({ a, b }) => ({ h: [0, Math.min(a, b) / 10] }),
  expression:
    'h / (2 pi) * sqrt((500.56 * (E_x / a^4 + E_y / b^4) + 302.7 (nu E_y + 2 G * (1 - nu^2 E_y / E_x)) / (a^2 b^2)) / (12 rho * (1 - nu^2 E_y / E_x)))',
  compute: ({ h, a, b, rho, E_x, E_y, G, nu }) => {
    const held = 1 - (nu ** 2 * E_y) / E_x;
    const both =
      500.56 * (E_x / a ** 4 + E_y / b ** 4) + (302.7 * (nu * E_y + 2 * G * held)) / (a ** 2 * b ** 2);
    return (h / (2 * Math.PI)) * Math.sqrt(both / (12 * rho * held)) * 1e6;
  },
  evidence: 'derived',
  source: 'Rayleigh’s method with the shape of a bar held at both ends (Leissa, Vibration of Plates).',
  limits: 'Edges that cannot turn at all. A real groove holds less, so a bottom sounds lower than this.',
});

/** One way of swinging: half waves along and across, and its frequency in Hz. */
export interface Mode {
  readonly m: number;
  readonly n: number;
  readonly f: number;
}

/** The lowest `count` notes of a panel carried on four edges, from low to high. Up to a dozen. */
export function lowestNotes(of: Panel, count = 12): readonly Mode[] {
  const ways = Array.from({ length: 12 }, (_, i) => i + 1);
  return ways
    .flatMap((m) => ways.map((n) => ({ m, n, f: noteOfPanel.compute({ ...of, m, n }) })))
    .sort((one, other) => one.f - other.f)
    .slice(0, count);
}
