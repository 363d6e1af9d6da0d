/** What mends the warnings of the example, worked out while the page is built: a first visit need not wait for it. */
import { designBox } from '../../box/design/design.ts';
import { mendRefusal } from '../../box/design/mend-refusal.ts';
import { smallestChanges } from '../../box/design/smallest-change.ts';
import { exampleFor } from '../../box/subjects/example.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { verdicts } from '../../box/whole/index.ts';
import { type Ruler, type UnitSystem, usualRuler } from '../../units/index.ts';
import type { Mend } from './mend.ts';
import type { PartOfBench } from './parts.ts';
import { judgedOf, type Warning } from './warnings.ts';

/** By the id of the warning, for each reader's example. */
export type KnownMends = Readonly<Record<UnitSystem, Readonly<Record<string, readonly Mend[]>>>>;

const mendsOf = (box: Box, warning: Warning, ruler: Ruler): readonly Mend[] =>
  'verdict' in warning
    ? smallestChanges(box, warning.verdict.check, ruler)
    : [mendRefusal(box, warning.refusal, ruler) ?? []].flat();

const warningsOf = (system: UnitSystem) => {
  const design = designBox(exampleFor(system));
  return judgedOf(verdicts(design.values), design.refusals, design.box.accepted).warnings;
};

const mendsFor = (system: UnitSystem) =>
  Object.fromEntries(
    warningsOf(system).map((warning) => [
      warning.id,
      mendsOf(exampleFor(system), warning, usualRuler[system]),
    ]),
  );

export const mendsOfExample = (): KnownMends => ({ mm: mendsFor('mm'), inch: mendsFor('inch') });

/** The part whose warning one change mends, so that a first visit begins where something can be done at once. */
export function firstPart({ mm }: KnownMends): PartOfBench {
  const warnings = warningsOf('mm');
  return (warnings.find(({ id }) => (mm[id]?.length ?? 0) > 0) ?? warnings[0])?.part ?? 'inside';
}
