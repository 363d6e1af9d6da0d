/** The words of all relations, for pages that open a reason. */
import type { APIRoute } from 'astro';
import { wordsFile } from '../prose/relation-words.ts';

export const getStaticPaths = async () => {
  const { name, json } = await wordsFile;
  return [{ params: { words: name.replace(/\.json$/, '') }, props: { json } }];
};

export const GET: APIRoute = ({ props }) =>
  new Response(props.json, { headers: { 'content-type': 'application/json' } });
