/** What of a box wants a look: what cannot be built, what breaks, what is unusual, in that order. */
import type { Verdict } from '../../box/core/verdict.ts';
import type { Refusal } from '../../box/design/refusal.ts';
import type { Values } from '../../box/whole/index.ts';
import type { Count } from '../verdicts/Mark.tsx';
import { partOfCheck } from './part-of-check.ts';
import { type PartOfBench, partOfRefusal } from './parts.ts';

/** A rule that is not kept. */
export interface Unkept {
  readonly id: string;
  readonly part: PartOfBench;
  readonly breaks: boolean;
  readonly verdict: Verdict<Values>;
}

/** Something that cannot be built. */
export interface Unbuildable {
  readonly id: string;
  readonly part: PartOfBench;
  readonly breaks: true;
  readonly refusal: Refusal;
}

export type Warning = Unkept | Unbuildable;

/** The verdicts of a box, by what the reader has to do with them. */
export interface Judged {
  /** The worst first; within that in the order of the work. */
  readonly warnings: readonly Warning[];
  /** Not kept, for a reason the reader has given. */
  readonly accepted: readonly Verdict<Values>[];
  readonly unknown: readonly Verdict<Values>[];
  readonly kept: readonly Verdict<Values>[];
}

const isWarned = ({ state }: Verdict<Values>) => state === 'breaks' || state === 'unusual';

/** @param accepted the reader's reasons, by check */
export function judgedOf(
  verdicts: readonly Verdict<Values>[],
  refusals: readonly Refusal[],
  accepted: Readonly<Record<string, string>>,
): Judged {
  const isAccepted = ({ check }: Verdict<Values>) => Object.hasOwn(accepted, check.id);
  const unkept = verdicts
    .filter((verdict) => isWarned(verdict) && !isAccepted(verdict))
    .map(
      (verdict): Unkept => ({
        id: verdict.check.id,
        part: partOfCheck(verdict.check.id),
        breaks: verdict.state === 'breaks',
        verdict,
      }),
    );
  return {
    warnings: [
      ...refusals.map(
        (refusal): Unbuildable => ({ id: refusal.id, part: partOfRefusal(refusal), breaks: true, refusal }),
      ),
      ...unkept.filter(({ breaks }) => breaks),
      ...unkept.filter(({ breaks }) => !breaks),
    ],
    accepted: verdicts.filter((verdict) => isWarned(verdict) && isAccepted(verdict)),
    unknown: verdicts.filter(({ state }) => state === 'unknown'),
    kept: verdicts.filter(({ state }) => state === 'usual'),
  };
}

export const countOf = (warnings: readonly Warning[]): Count => {
  const breaks = warnings.filter((one) => one.breaks).length;
  return { breaks, looks: warnings.length - breaks };
};

/** Counts by part. */
export const countsByPart = (warnings: readonly Warning[]): ((part: PartOfBench) => Count) => {
  return (part) => countOf(warnings.filter((one) => one.part === part));
};

/** The first sentence of a reason. */
export const firstSentence = (text: string): string => /^.*?[.!?](?=\s|$)/s.exec(text)?.[0] ?? text;
