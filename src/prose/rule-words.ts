/** The texts of the rules, to be searched: fetched once the list from A to Z is opened. Its name changes with its content. */
import { getCollection } from 'astro:content';
import { createHash } from 'node:crypto';

export const ruleWordsFile = getCollection('rules').then((rules) => {
  const json = JSON.stringify(
    Object.fromEntries(
      rules.map(({ id, data, body }) => [
        id,
        `${data.ignored} ${data.exception} ${(body ?? '').replace(/<[^>]*>/g, ' ')}`,
      ]),
    ),
  );
  return { name: `rules-${createHash('sha256').update(json).digest('hex').slice(0, 8)}.json`, json };
});
