/**
 * A tap as samples: the velocity of the tapped point, note by note, while the knuckle is on the wood and after.
 *
 * Each note is a swing of its own that a half-sine push starts. With w = 2 pi f, p = pi/T and c = 1/(4 f^2 T^2 - 1):
 *   t < T:  v = (start/2) c (cos p t - cos w t)
 *   t > T:  v = -start c cos(w T/2) cos(w (t - T/2)) e^(-pi eta f (t - T))
 * `start` is the velocity that a push of no length would give. What of it the air carries to an ear is not reckoned.
 * Nothing here plays: a caller multiplies by its own volume. Cremer, Heckl and Petersson, Structure-Borne Sound.
 *
 * Apart from `tap-notes.ts`, so that only who asks for a sound fetches this.
 */
import type { TapNote } from './tap-notes.ts';

/** The tap as velocities at so many points of time a second; ends when the longest note has faded to a thousandth. */
export function tapSamples(
  notes: readonly TapNote[],
  contact: number,
  rate: number,
): Float32Array<ArrayBuffer> {
  const T = contact / 1000;
  const seconds = T + Math.max(0, ...notes.map(({ ring }) => ring));
  const samples = new Float32Array(Math.ceil(seconds * rate));
  for (const { f, start, ring } of notes) {
    const turns = 2 * f * T;
    // For a push as long as half a swing both parts would be without end; a hair beside it they give the same.
    const w = 2 * Math.PI * f * (Math.abs(turns - 1) < 1e-5 ? 1 + 1e-4 : 1);
    const c = 1 / (((w * T) / Math.PI) ** 2 - 1);
    const free = -start * c * Math.cos((w * T) / 2);
    const fades = (3 * Math.LN10) / ring;
    for (let i = 0; i < samples.length; i++) {
      const t = i / rate;
      samples[i]! +=
        t < T
          ? (start / 2) * c * (Math.cos((Math.PI * t) / T) - Math.cos(w * t))
          : free * Math.cos(w * (t - T / 2)) * Math.exp(-fades * (t - T));
    }
  }
  return samples;
}

/** The greatest of the samples, up or down. */
export const peakOf = (samples: Float32Array): number =>
  samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);

/** Loudest that a sample may be. */
const LOUDEST = 0.9;

/**
 * Several taps brought to numbers that a loudspeaker takes, none beyond 0.9: all by one factor, so that a quiet one stays
 * as quiet as it is beside the others, or each by its own (`alike`).
 */
export function soundsOf(
  taps: readonly (readonly TapNote[])[],
  contact: number,
  rate: number,
  alike: boolean,
): readonly Float32Array<ArrayBuffer>[] {
  const samples = taps.map((notes) => tapSamples(notes, contact, rate));
  const peaks = samples.map(peakOf);
  const most = Math.max(...peaks);
  return samples.map((of, i) => of.map((sample) => (LOUDEST * sample) / (alike ? peaks[i]! : most)));
}
