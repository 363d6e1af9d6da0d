/** Everything a page says about a relation, made while the site is built. */
import { getCollection } from 'astro:content';
import { createHash } from 'node:crypto';
import type { Card } from '../calc/core/relation.ts';
import { relations } from '../calc/index.ts';
import type { Reason } from '../widgets/kit/reasons.ts';
import { equationOf } from './equation.ts';

const cited = getCollection('sources').then((sources) => new Map(sources.map(({ id, data }) => [id, data])));

/** @param of relations in any order, also more than once */
export async function reasonsOf(of: readonly Card[]): Promise<Record<string, Reason>> {
  const sources = await cited;
  return Object.fromEntries(
    of.map((relation) => {
      const source = sources.get(relation.source);
      return [
        relation.id,
        {
          title: relation.title,
          ...equationOf(relation),
          names: Object.fromEntries(
            Object.entries(relation.inputs).map(([symbol, { name }]) => [symbol, name]),
          ),
          evidence: relation.evidence,
          source: source ? `${source.citation} Read: ${source.read}.` : relation.source,
          limits: relation.limits,
        },
      ];
    }),
  );
}

const text = reasonsOf([...relations.values()]).then((words) => JSON.stringify(words));

/**
 * The words of all relations as a file for pages that open a reason. Its name changes with its content, so that a page
 * never gets the words of another version than its own numbers.
 */
export const reasonsFile = text.then((json) => ({
  name: `relations-${createHash('sha256').update(json).digest('hex').slice(0, 8)}.json`,
  json,
}));
