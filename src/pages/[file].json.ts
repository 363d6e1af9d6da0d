/**
 * What pages fetch when it is first asked for: the words of all relations, what answers are found in, the texts of the rules,
 * the questions that are asked again.
 */
import type { APIRoute } from 'astro';
import { askFile } from '../prose/ask-file.ts';
import { notebookFile } from '../prose/notebook-file.ts';
import { reasonsFile } from '../prose/reasons.ts';
import { ruleWordsFile } from '../prose/rule-words.ts';

export const getStaticPaths = async () =>
  (await Promise.all([reasonsFile, askFile, ruleWordsFile, notebookFile])).map(({ name, json }) => ({
    params: { file: name.replace(/\.json$/, '') },
    props: { json },
  }));

export const GET: APIRoute = ({ props }) =>
  new Response(props.json, { headers: { 'content-type': 'application/json' } });
