/**
 * Whether a finger joint goes together: play of one finger, errors of the steps, swelling by the glue's water.
 *
 * An index jig cuts one slot, hangs it over a pin and cuts the next. One step of the jig is one slot and one finger.
 *
 *   c = 2k − p            play of a finger; the same for every finger, so it does not add up
 *   d_i = i δ             error of place after i steps, when every step is off by δ
 *   σ_i = σ √(2i)         the same for chance errors of size σ in both walls
 *   binds when d_i > c    the first step after which no shift of the walls lets all fingers in
 *
 * Symbols: k slot width (mm), p step, slot to slot (mm), c slot less finger (mm), i number of steps (1), δ error of one
 * step (mm), σ spread of the error of one step (mm).
 *
 * What δ does depends on the other wall. Both walls cut on one setting from the same edge: both drift alike, they mate,
 * and only places and the last finger are off by i δ. Walls cut on two settings: δ is the difference of their steps,
 * and the fingers miss their slots by i δ. One setting, but from opposite edges: the steps are still equal, so the
 * fingers go in, and the edges of the two walls stand off by the whole of it.
 * Held fixed: stiff walls; the walls may shift along the joint as far as the play allows.
 */
import { relation } from '../core/relation.ts';

const steps = { name: 'number of steps', unit: '1', range: [0, 100], whole: true } as const;

/** Steps of the jig along one wall of a joint of n fingers: a step is a slot and a finger. */
export const stepsAlong = relation({
  id: 'steps-along',
  title: 'Steps of the jig along one wall',
  result: { symbol: 'i', name: 'number of steps', unit: '1' },
  inputs: { n: { name: 'number of fingers', unit: '1', range: [1, 200], whole: true } },
  expression: 'floor(n / 2)',
  compute: ({ n }) => Math.floor(n / 2),
  evidence: 'geometry',
  source: 'One step covers a finger of each wall.',
});

/** Slot less finger, from the slot's width and the step: negative where the finger is too wide. Does not add up. */
export const fingerPlay = relation({
  id: 'finger-play',
  title: 'Play of a finger in its slot',
  result: { symbol: 'c', name: 'slot minus finger', unit: 'mm' },
  inputs: {
    k: { name: 'slot width', unit: 'mm', range: [1, 60] },
    p: { name: 'step, slot to slot', unit: 'mm', range: [2, 120] },
  },
  expression: '2 k - p',
  compute: ({ k, p }) => 2 * k - p,
  evidence: 'geometry',
  source: 'A finger is what the step leaves beside the slot: p − k.',
});

/** Error of place after so many steps that are all off alike, mm. What it does depends on how the other wall was cut; see above. */
export const addedStepError = relation({
  id: 'added-step-error',
  title: 'Step error that adds up',
  result: { symbol: 'd', name: 'error after all steps', unit: 'mm' },
  inputs: { i: steps, delta: { name: 'error of each step', unit: 'mm', range: [0, 1] } },
  expression: 'i delta',
  compute: ({ i, delta }) => i * delta,
  evidence: 'geometry',
  source: 'Each step starts from the last, so equal errors sum.',
  limits: 'Between two walls it counts only when they are cut on different settings or from opposite edges.',
});

/** Expected mismatch of two walls cut separately, after so many steps with chance errors, mm (one standard deviation). */
export const randomStepError = relation({
  id: 'random-step-error',
  title: 'Chance errors of the steps',
  result: { symbol: 'd', name: 'likely error after all steps', unit: 'mm' },
  inputs: {
    i: steps,
    sigma: { name: 'usual size of one chance error', unit: 'mm', range: [0, 1] },
  },
  expression: 'sigma sqrt(2 i)',
  compute: ({ i, sigma }) => sigma * Math.sqrt(2 * i),
  evidence: 'derived',
  source: 'Independent errors add as squares; both walls have i of them.',
  limits:
    'For errors that fall either way, such as a chip under the wall. Walls cut stacked together have none.',
});

/** Growth of a finger's width as it takes up water from the glue, mm. */
export const fingerSwelling = relation({
  id: 'finger-swelling',
  title: 'Swelling of a finger by the glue’s water',
  result: { symbol: 'dF', tex: '\\Delta f', name: 'growth of a finger', unit: 'mm' },
  inputs: {
    f: { name: 'finger width', unit: 'mm', range: [1, 60] },
    C: { name: 'movement per 1 % moisture content', unit: '1', range: [0.0001, 0.006] },
    dM: { name: 'moisture taken up from the glue', unit: '%', points: true, range: [0, 8], tex: '\\Delta M' },
  },
  expression: 'f C dM',
  compute: ({ f, C, dM }) => f * C * dM,
  evidence: 'derived',
  source: 'The coefficient method of the Wood Handbook, taken along the rings, where wood moves most.',
  limits: 'How much water a finger takes up before the joint is home is not known well: 5 %§.',
});

/** Moisture a finger takes up from a water-based glue, % points: the size assumed here, from memory, no source seen. */
export const glueWater = 5;

/** Depth of the slots for fingers that stand proud, mm; with e = 0 they end flush. */
export const slotDepth = relation({
  id: 'slot-depth',
  title: 'Depth of the slots',
  result: { symbol: 'd', name: 'depth of the slots', unit: 'mm' },
  inputs: {
    t: { name: 'wall thickness', unit: 'mm', range: [1, 30] },
    e: { name: 'how far the ends stand proud', unit: 'mm', range: [0, 3] },
  },
  expression: 't + e',
  compute: ({ t, e }) => t + e,
  evidence: 'geometry',
  source: 'The finger passes through the other wall and stands out by the rest.',
});

/** Longest a trial assembly may take, in minutes, for a glue that stays open so many minutes. */
export const rehearsalTime = relation({
  id: 'rehearsal-time',
  title: 'Longest trial assembly',
  result: { symbol: 'T', name: 'minutes for the trial', unit: '1' },
  inputs: {
    T_open: {
      name: 'open time of the glue, minutes',
      unit: '1',
      range: [1, 120],
      tex: 'T_{\\mathrm{open}}',
    },
  },
  expression: 'T_open / 2',
  compute: ({ T_open }) => T_open / 2,
  evidence: 'common practice',
  source: 'The other half goes on spreading the glue, which the trial leaves out.',
});

/**
 * The step after which two walls, cut on settings that differ by δ a step, can no longer be brought together: the
 * first i with i δ > c. The finger beyond that step is the one that binds, number 2i of the corner.
 * @returns `undefined` where the joint closes.
 */
export function bindingStep(steps: number, stepError: number, play: number): number | undefined {
  for (let i = 1; i <= steps; i++) if (i * stepError > play + 1e-9) return i;
  return undefined;
}
