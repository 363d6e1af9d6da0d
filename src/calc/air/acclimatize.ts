/**
 * Waiting for wood by weighing it: ready when two weighings some days apart agree.
 *
 * Mass goes as 100 + M, so the weighings see what moisture is still doing, not how far it has to go: thick wood
 * changes so slowly that it seems ready early. Here is when the rule says ready, and what is then still missing.
 */
import { firstRefusal, type Refused } from '../core/refusal.ts';
import { relation } from '../core/relation.ts';

/** Weighings three days apart that agree within 0.3 % of the mass: common practice. */
export const WEIGHING = { apart: 3, within: 0.3 } as const;

/** How far two weighings differ. */
export const weighingChange = relation({
  id: 'weighing-change',
  title: 'By how much the mass changed between two weighings',
  result: { symbol: 'c', name: 'change of the mass', unit: '%' },
  inputs: {
    m_1: { name: 'mass at the first weighing', unit: 'g', range: [1, 20_000] },
    m_2: { name: 'mass at the second weighing', unit: 'g', range: [1, 20_000] },
  },
  expression: '100 (m_2 - m_1) / m_1',
  compute: ({ m_1, m_2 }) => (100 * (m_2 - m_1)) / m_1,
  evidence: 'geometry',
  source: 'The difference as a share of the first weighing.',
});

/** When the rule says ready. */
export interface Ready {
  /** Day of the second of the two weighings, the wood arriving on day 0. */
  readonly day: number;
  /** Moisture then (%), and points still to go to `target`; negative when still to lose. */
  readonly moisture: number;
  readonly left: number;
}

/**
 * First day on which two weighings `apart` days from each other agree within `within` percent of the mass.
 * @param mean moisture by day from arrival (%), as in `moistureCourse(...).mean`. @param target moisture it will settle at (%).
 * @returns a refusal when the weighings do not agree within the days given.
 */
export function readyByWeighing(
  mean: ArrayLike<number>,
  target: number,
  { apart, within }: { readonly apart: number; readonly within: number } = WEIGHING,
): Ready | Refused {
  const bad = firstRefusal(
    ['days between weighings', apart, 1, 60, ''],
    ['agreement asked for', within, 0.01, 5, ' %'],
    ['moisture to settle at', target, 0, 30, ' %'],
  );
  if (bad) return bad;
  for (let day = apart; day < mean.length; day++) {
    const [before, moisture] = [mean[day - apart]!, mean[day]!];
    const change = (100 * Math.abs(moisture - before)) / (100 + before);
    if (change <= within) return { day, moisture, left: target - moisture };
  }
  return { refused: `After ${Math.max(0, mean.length - 1)} days the weighings do not agree yet.` };
}
