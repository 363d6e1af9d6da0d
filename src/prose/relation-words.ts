/** Everything a page says about a relation, made while the site is built. */
import { getCollection } from 'astro:content';
import type { Card } from '../calc/relation.ts';
import type { RelationWords } from '../widgets/words.ts';
import { equationOf } from './equation.ts';

const cited = getCollection('sources').then((sources) => new Map(sources.map(({ id, data }) => [id, data])));

/** @param of relations in any order, also more than once */
export async function wordsOf(of: readonly Card[]): Promise<Record<string, RelationWords>> {
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
