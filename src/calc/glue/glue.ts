/**
 * Glue and finish: how hard to clamp, how much to spread.
 *
 *   F = p A          clamp force over the area that faces the clamp
 *   m = A s          glue for an area, spread on one of the two faces
 *   V = A w n        finish for an area in n coats
 *
 * Symbols: p pressure (MPa), A area (mm²), s spread (g/m²), w wet film of one coat (mm), n coats.
 * Held fixed: the force is shared evenly, the parts fit. Pressure buys contact only: a joint that fits needs less.
 */
import { relation } from '../core/relation.ts';

const area = { unit: 'mm^2', range: [1, 2e6] } as const;

/** Force of all clamps over one area, N. */
export const clampForce = relation({
  id: 'clamp-force',
  title: 'Clamp force for a pressure',
  result: { symbol: 'F', name: 'clamp force', unit: 'N' },
  inputs: {
    p: { name: 'pressure', unit: 'MPa', range: [0, 3] },
    A: { ...area, name: 'area that faces the clamp' },
  },
  expression: 'p * A',
  compute: ({ p, A }) => p * A,
  evidence: 'geometry',
  source: 'Pressure is force over area.',
  limits:
    'Glue makers’ pressures are for flat boards. Small joints that fit are clamped with far less, by tape or a strap, and hold.',
});

/** Glue for an area, g. */
export const glueMass = relation({
  id: 'glue-mass',
  title: 'Glue for an area',
  result: { symbol: 'm', name: 'mass of glue', unit: 'g' },
  inputs: {
    A: { ...area, name: 'glued area' },
    s: { name: 'spread', unit: 'g/m^2', range: [50, 400] },
  },
  expression: 'A * s',
  compute: ({ A, s }) => (A * s) / 1e6,
  evidence: 'geometry',
  source: 'Area times mass on each square meter.',
  limits: 'End grain drinks more, and some stays on the brush.',
});

/** Finish for an area, mm³ (1000 mm³ = 1 ml). */
export const finishVolume = relation({
  id: 'finish-volume',
  title: 'Finish for an area',
  result: { symbol: 'V', name: 'volume of finish', unit: 'mm^3' },
  inputs: {
    A: { ...area, name: 'finished area' },
    w: { name: 'wet film of one coat', unit: 'mm', range: [0.01, 0.3] },
    n: { name: 'coats', unit: '1', range: [1, 10], whole: true },
  },
  expression: 'A * w * n',
  compute: ({ A, w, n }) => A * w * n,
  evidence: 'geometry',
  source: 'A film is an area times its thickness.',
  limits: 'What the rag and the wood drink comes on top.',
});

/** A range of values from one source, and how it is known. */
export interface KnownRange {
  readonly low: number;
  readonly high: number;
  readonly known: string;
}

const guide = 'a glue maker’s guide¶';
/**
 * Clamping pressures by how dense the wood is, MPa: 100 to 150, 150 to 200 and 200 to 300 lbf/in² of a glue maker's
 * guide for softwoods, for cherry and soft maple, and for oak and birch. Another copy of the guide says 175 to 250 for
 * hardwoods, which is why the last range starts there. The limits of specific gravity between the three are ours.
 */
export const clampPressures: readonly (KnownRange & { readonly below: number })[] = [
  { below: 0.45, low: 0.69, high: 1.03, known: guide },
  { below: 0.58, low: 1.03, high: 1.38, known: guide },
  { below: Number.POSITIVE_INFINITY, low: 1.21, high: 2.07, known: guide },
];

/** The range for a wood; for an unknown wood the widest. */
export function clampPressure(specificGravity: number): KnownRange {
  return (
    clampPressures.find(({ below }) => specificGravity < below) ?? { low: 0.69, high: 2.07, known: guide }
  );
}

/** Usual spread of water glue, g/m². */
export const glueSpread: KnownRange = { low: 150, high: 250, known: 'as remembered§' };

/** Wet film of one coat, mm: wiped on thin to brushed. */
export const wetFilm: KnownRange = { low: 0.03, high: 0.1, known: 'common practice' };
