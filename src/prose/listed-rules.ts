/** The rules as their index lists them: by part of the box and by stage of the work. */
import type { CollectionEntry } from 'astro:content';
import type { ListedRule, PartOfRules } from '../widgets/finder/rule-lines.ts';
import { anchorOfPart, anchorOfStage, drawnParts, type parts, stages } from './rule-terms.ts';

type Rule = Pick<CollectionEntry<'rules'>, 'id'> & {
  data: Pick<CollectionEntry<'rules'>['data'], 'title' | 'usual' | 'parts' | 'stage'>;
};

/** In the order of the work. */
export const listedRules = (rules: readonly Rule[]): ListedRule[] =>
  [...rules]
    .sort(
      (a, b) =>
        stages.indexOf(a.data.stage) - stages.indexOf(b.data.stage) ||
        a.data.title.localeCompare(b.data.title),
    )
    .map(({ id, data: { title, usual, parts: own } }) => ({
      id,
      title,
      path: `rules/${id}/`,
      usual,
      parts: own.map(anchorOfPart),
    }));

/** In the order of the alphabet; those that this box is prone to come first where they are shown. */
export const listedTroubles = (troubles: readonly CollectionEntry<'troubles'>[]): ListedRule[] =>
  [...troubles]
    .sort((a, b) => a.data.title.localeCompare(b.data.title, 'en'))
    .map(({ id, data: { title, checks, part, kind } }) => ({
      id,
      title,
      path: `troubles/${id}/`,
      checks,
      kind,
      parts: [anchorOfPart(part)],
    }));

/** In the order in which they are named. */
export const partsOfRules: readonly PartOfRules[] = (
  Object.entries(drawnParts) as [(typeof parts)[number], (typeof drawnParts)[(typeof parts)[number]]][]
).map(([part, of]) => ({ anchor: anchorOfPart(part), ...of }));

/** Stages that have rules, in the order of the work. */
export const stagesOfRules = <Some extends Rule>(rules: readonly Some[]) =>
  stages
    .map((stage) => ({
      stage,
      anchor: anchorOfStage(stage),
      rules: rules
        .filter(({ data }) => data.stage === stage)
        .sort((a, b) => a.data.title.localeCompare(b.data.title)),
    }))
    .filter((one) => one.rules.length > 0);
