/**
 * Step errors along one board, cut alone: what a common error and a chance error come to.
 *
 *   common error δ     d = n δ         `addedStepError` in joint-fit.ts
 *   chance errors σ    d = σ √n        either way, so most of them cancel
 *
 * Symbols: n steps (1), σ usual size (one standard deviation) of the chance error of one step, mm.
 */
import { relation } from '../core/relation.ts';

/** Likely error of place of the last slot of one board, after n steps with chance errors, mm (one standard deviation). */
export const randomStepErrorOfOne = relation({
  id: 'random-step-error-of-one',
  title: 'Chance errors of the steps along one board',
  result: { symbol: 'd', name: 'likely error after all steps', unit: 'mm' },
  inputs: {
    n: { name: 'number of steps', unit: '1', range: [0, 200], whole: true },
    sigma: { name: 'usual size of one chance error', unit: 'mm', range: [0, 1] },
  },
  expression: 'sigma sqrt(n)',
  compute: ({ n, sigma }) => sigma * Math.sqrt(n),
  evidence: 'derived',
  source: 'Independent errors add as squares.',
  limits: 'For errors that fall either way. An error that every step shares grows with n itself.',
});
