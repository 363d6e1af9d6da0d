/**
 * A groove that is stopped with a round blade ends in an arc, not in a wall.
 *
 *   ───────────────────────╮            full depth up to here, then the blade's arc rises to the surface
 *   ░░░░░░░░░░░░░░░░░░░░ ╭─╯  g         over the run a
 *                        ├ a ┤
 *
 * Symbols: R radius of the blade, g depth of the groove, a run of the arc (all mm).
 * Held fixed: the blade stands square to the face and is not moved sideways. Source: geometry.
 */
import { relation } from '../core/relation.ts';

/** How far beyond its full depth a groove runs out where a round blade stops, mm. */
export const arcRun = relation({
  id: 'saw-arc-run',
  title: 'Run of a groove that a round blade leaves',
  result: { symbol: 'a', name: 'run of the arc', unit: 'mm' },
  inputs: {
    R: { name: 'radius of the blade', unit: 'mm', range: [10, 250] },
    g: { name: 'depth of the groove', unit: 'mm', range: [0, 30] },
  },
  rangesGiven: ({ R }) => ({ g: [0, Math.min(30, R)] }),
  expression: 'sqrt(g * (2 R - g))',
  compute: ({ R, g }) => Math.sqrt(g * (2 * R - g)),
  evidence: 'geometry',
  source: 'Half the chord of the blade’s circle at the surface of the wood.',
  limits: 'A router bit leaves half of its own width instead.',
});
