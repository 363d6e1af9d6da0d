/**
 * What is written down and left on before wood is cut: how far its air goes in a year, and what is planed off after it has
 * rested.
 *
 *   dh = h_2 - h_1      x = 2 p
 *
 * Symbols: h_2 and h_1 relative humidity at the dampest and the driest (%); p planed off each face (mm).
 */
import { relation } from '../core/relation.ts';

/** How much damper the air is at its dampest than at its driest, points. */
export const humiditySwing = relation({
  id: 'humidity-swing',
  title: 'How far the humidity goes in a year',
  result: {
    symbol: 'dh',
    tex: '\\Delta h',
    name: 'difference of the year’s humidity',
    unit: '%',
    points: true,
  },
  inputs: {
    h_2: { name: 'humidity at the dampest', unit: '%', range: [0, 100] },
    h_1: { name: 'humidity at the driest', unit: '%', range: [0, 100] },
  },
  expression: 'h_2 - h_1',
  compute: ({ h_2, h_1 }) => h_2 - h_1,
  evidence: 'geometry',
  source: 'One less the other.',
});

/** Wood that planing takes off both faces of a piece, mm. */
export const planedOff = relation({
  id: 'planed-off',
  title: 'Wood left to plane off',
  result: { symbol: 'x', name: 'planed off both faces', unit: 'mm' },
  inputs: { p: { name: 'planed off each face', unit: 'mm', range: [0, 20] } },
  expression: '2 p',
  compute: ({ p }) => 2 * p,
  evidence: 'geometry',
  source: 'Two faces.',
});
