/**
 * Grits of abrasive paper, one after the other.
 *
 *   r = G_2 / G_1        n = ln(G / g) / ln(r)
 *
 * Symbols: G_1, G_2 a grit and the next, r the step between them; g the first grit, G the last, n steps.
 * A grit number orders papers from coarse to fine, and no more is made of it here: how deep each one scratches was found
 * in no source that could be named, so no depth is computed from it.
 */
import { relation } from '../core/relation.ts';

/** The row that shops keep: common practice. */
export const grits = [80, 100, 120, 150, 180, 220, 320] as const;
/** The widest step where one of the row up to 220 is left out: 80 to 120, 100 to 150, 120 to 180. */
export const WIDEST_STEP = 1.5;

const grit = { unit: '1', range: [36, 1000] } as const;

/** How many times finer the next paper is numbered. */
export const gritStep = relation({
  id: 'grit-step',
  title: 'Step from one grit to the next',
  result: { symbol: 'r', name: 'step', unit: '1' },
  inputs: {
    G_1: { ...grit, name: 'grit in use', tex: 'G_1' },
    G_2: { ...grit, name: 'next grit', tex: 'G_2' },
  },
  expression: 'G_2 / G_1',
  compute: ({ G_1, G_2 }) => G_2 / G_1,
  evidence: 'common practice',
  source: 'That no more than one grit of the row is left out is common practice; the step is arithmetic.',
  limits: 'The numbers of two systems of grits are not the same above 220.',
});

/** Steps from the first paper to the last, whole steps being the number above. */
export const gritSteps = relation({
  id: 'grit-steps',
  title: 'Steps from the first grit to the last',
  result: { symbol: 'n', name: 'steps', unit: '1' },
  inputs: {
    g: { ...grit, name: 'first grit' },
    G: { ...grit, name: 'last grit' },
    r: { name: 'widest step', unit: '1', range: [1.1, 3] },
  },
  rangesGiven: ({ g }) => ({ G: [g, 1000] }),
  expression: 'log(G / g) / log(r)',
  compute: ({ g, G, r }) => Math.log(G / g) / Math.log(r),
  evidence: 'derived',
  source: 'Equal steps multiply.',
});

/** The widest step in a row of papers. @param row grits from coarse to fine, two or more. */
export const widestStep = (row: readonly number[]): number =>
  Math.max(...row.slice(1).map((next, at) => gritStep.compute({ G_1: row[at]!, G_2: next })));
