/**
 * The band of a number: its values at which every rule that it moves is kept, found by trying some fifty of them on the
 * whole box, with all that gives way. A rule that no value of this number keeps is cured by another number, so it does not
 * narrow the band.
 */

import type { Ruler } from '../../units/index.ts';
import { clean } from '../../units/rounding.ts';
import { stepOf } from '../core/field.ts';
import { type Box, fields, type NumberName } from '../subjects/inputs.ts';
import { evaluate } from '../whole/index.ts';
import { givingWay } from './gives-way.ts';
import { refusalsOf } from './refusals/index.ts';
import { type Standing, standingOf } from './standing.ts';
import { besideOf, closeIn, type Stretch, stretchesOf, tried } from './trials.ts';

export interface Bands {
  /** Where every rule that this number moves is kept, ascending. */
  readonly kept: readonly Stretch[];
  /** Where something breaks, or the box cannot be built, that another value would save. */
  readonly breaks: readonly Stretch[];
  /** It moves no rule: there is nothing to keep. */
  readonly isFree: boolean;
  /** How the present value stands by the same rules. */
  readonly now: Sort;
  /** What is lost first on either side of the band that is nearest to the present value; without a band, at that value. */
  readonly limits: {
    /** Ids of checks. */
    readonly checks: readonly string[];
    /** What cannot be built there, in a sentence each. */
    readonly refusals: readonly string[];
  };
}

export type Sort = 'kept' | 'outside' | 'breaks';

/** What each rule and condition says over all trials: those that some values satisfy and others do not. */
function movedBy(standings: Iterable<Standing>): { checks: Set<string>; refusals: Set<string> } {
  const seen = { kept: new Set<string>(), lost: new Set<string>(), refused: new Map<string, number>() };
  let count = 0;
  for (const { ranks, refused } of standings) {
    count++;
    for (const [id, rank] of ranks) seen[rank === 0 ? 'kept' : 'lost'].add(id);
    for (const id of refused) seen.refused.set(id, (seen.refused.get(id) ?? 0) + 1);
  }
  return {
    checks: new Set([...seen.lost].filter((id) => seen.kept.has(id))),
    refusals: new Set([...seen.refused].filter(([, times]) => times < count).map(([id]) => id)),
  };
}

/**
 * @param name an input that is a number
 * @returns stretches between the reader's marks, within the limits of the field
 */
export function bandsOf(box: Box, name: NumberName, ruler: Ruler): Bands {
  const field = fields[name];
  const step = stepOf(field, ruler);
  const v = evaluate(box);
  const [least, most] = [Math.ceil(field.low / step - 1e-9), Math.floor(field.high / step + 1e-9)];
  const boxAt = (count: number) => ({ ...box, ...givingWay(v, name, clean(count * step), ruler) });
  const trials = new Map<number, Standing>();
  const standAt = (count: number): Standing => {
    const known = trials.get(count);
    if (known) return known;
    const standing = standingOf(boxAt(count));
    trials.set(count, standing);
    return standing;
  };
  const present = standingOf(box);
  const start = Math.min(most, Math.max(least, Math.round(box[name] / step)));
  for (const count of tried(least, most, start)) standAt(count);
  const { checks, refusals } = movedBy([...trials.values(), present]);
  const isFree = checks.size + refusals.size === 0;
  const lostIn = ({ ranks, refused }: Standing, rank: number) => [
    ...[...checks].filter((id) => (ranks.get(id) ?? 0) >= rank),
    ...[...refusals].filter((id) => refused.has(id)),
  ];
  // Rules that cannot all be kept at once: those lost now are for another number to cure.
  if (![...trials.values()].some((one) => lostIn(one, 1).length === 0))
    for (const [id, rank] of present.ranks) if (rank > 0) checks.delete(id);
  const sortOf = (standing: Standing): Sort =>
    lostIn(standing, 2).length > 0 ? 'breaks' : lostIn(standing, 1).length > 0 ? 'outside' : 'kept';
  closeIn(
    [...trials.keys()].sort((a, b) => a - b),
    (count) => sortOf(standAt(count)),
  );
  const counts = [...trials.keys()].sort((a, b) => a - b);
  const stretches = (sort: Sort) => stretchesOf(counts, (count) => sortOf(standAt(count)) === sort);
  const kept = stretches('kept');
  const beside = besideOf(kept, start).filter((count) => count >= least && count <= most);
  const at = ([from, to]: Stretch): Stretch => [clean(from * step), clean(to * step)];
  return {
    kept: kept.map(at),
    breaks: stretches('breaks').map(at),
    isFree,
    now: sortOf(present),
    limits: {
      checks: [...checks].filter((id) => beside.some((count) => (standAt(count).ranks.get(id) ?? 0) > 0)),
      refusals: beside.flatMap((count) =>
        refusalsOf(evaluate(boxAt(count)))
          .filter(({ id }) => refusals.has(id))
          .map(({ what }) => what),
      ),
    },
  };
}
