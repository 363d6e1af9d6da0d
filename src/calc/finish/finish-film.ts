/**
 * What a finish does to a box besides moisture: the room its film takes, and the oxygen a drying oil needs.
 *
 *   b = f n h            m = o V / s
 *
 * Symbols: b what the films take (mm), f faces that carry the film, n coats, h dry film of a coat on a face (mm);
 * m mass of oil (g), V volume of the air shut in (mm³), o oxygen in it (kg/m³), s share of its own mass that the oil takes up.
 * Held fixed: even coats, a box that stays shut.
 */
import { relation } from '../core/relation.ts';

/** Dry film of one brushed coat on one face, mm: common practice. A wiping finish leaves about a third of that. */
export const COAT = 0.03;

/** Oxygen in air, kg/m³, at 20 °C: 23.1 % of the mass of air of 1.2 kg/m³ (from memory). */
export const OXYGEN = 0.278;

/** Room that a film takes from a fit. */
export const filmBuild = relation({
  id: 'film-build',
  title: 'Room that the film of a finish takes from a fit',
  result: { symbol: 'b', name: 'room taken', unit: 'mm' },
  inputs: {
    f: { name: 'faces with a film in this fit', unit: '1', range: [1, 4], whole: true },
    n: { name: 'coats', unit: '1', range: [1, 10], whole: true },
    h: { name: 'dry film of one coat on one face', unit: 'mm', range: [0.001, 0.2] },
  },
  expression: 'f n h',
  compute: ({ f, n, h }) => f * n * h,
  evidence: 'common practice',
  source: 'Geometry; the thickness of a coat is common practice and differs a lot between products.',
});

/** Play that the film of a finish leaves, mm; below zero the parts jam. */
export const playUnderFilm = relation({
  id: 'play-under-film',
  title: 'Play that a finish leaves',
  result: { symbol: 'q', name: 'play left', unit: 'mm' },
  inputs: { p: { name: 'play without a film', unit: 'mm', range: [-100, 100] }, ...filmBuild.inputs },
  expression: 'p - f n h',
  compute: ({ p, ...film }) => p - filmBuild.compute(film),
  evidence: 'common practice',
  source: filmBuild.source,
});

/** Mass of drying oil that the air shut in a box can harden. */
export const oilHardenedByShutAir = relation({
  id: 'oil-hardened-by-shut-air',
  title: 'How much drying oil the air in a shut box can harden',
  result: { symbol: 'm', name: 'mass of oil', unit: 'g' },
  inputs: {
    V: { name: 'volume of the air shut in', unit: 'mm^3', range: [1e4, 1e8] },
    o: { name: 'oxygen in the air', unit: 'kg/m^3', range: [0.15, 0.3] },
    s: { name: 'share of its own mass that the oil takes up', unit: '1', range: [0.05, 0.25] },
  },
  expression: 'o V / s',
  compute: ({ V, o, s }) => (o * V * 1e-6) / s,
  evidence: 'from memory',
  source:
    'Oxygen is 23 % of the mass of air; a drying oil takes up about a tenth of its own mass and more while it hardens§.',
  limits: 'No box is quite tight: it breathes a little, and each opening changes the air.',
});
