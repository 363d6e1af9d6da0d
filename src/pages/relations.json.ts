/** The words of all relations, for pages that open a reason. */
import { relations } from '../calc/index.ts';
import { wordsOf } from '../prose/relation-words.ts';

export async function GET(): Promise<Response> {
  return new Response(JSON.stringify(await wordsOf([...relations.values()])), {
    headers: { 'content-type': 'application/json' },
  });
}
