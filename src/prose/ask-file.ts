/** What answers are found in, as a file for the first question. Its name changes with its content. */
import { getCollection } from 'astro:content';
import { createHash } from 'node:crypto';
import { allWoods } from '../box/wood/all-woods.ts';
import { woodById } from '../box/wood/woods.ts';
import { askFileOf } from './ask-entries.ts';

export const askFile = Promise.all([
  getCollection('rules'),
  getCollection('lessons'),
  getCollection('words'),
  getCollection('glossary'),
  getCollection('troubles'),
  getCollection('asked'),
  getCollection('beyond'),
]).then(([rules, lessons, words, glossary, troubles, asked, beyond]) => {
  const stillWoods = allWoods.filter(({ id }) => !woodById(id)).map(({ name }) => name);
  const json = JSON.stringify(
    askFileOf({ rules, lessons, words, glossary, troubles, asked, beyond, stillWoods }),
  );
  return { name: `ask-${createHash('sha256').update(json).digest('hex').slice(0, 8)}.json`, json };
});
