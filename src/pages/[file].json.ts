/** What pages fetch when it is first asked for: the words of all relations, and what answers are found in. */
import type { APIRoute } from 'astro';
import { askFile } from '../prose/ask-file.ts';
import { reasonsFile } from '../prose/reasons.ts';

export const getStaticPaths = async () =>
  (await Promise.all([reasonsFile, askFile])).map(({ name, json }) => ({
    params: { file: name.replace(/\.json$/, '') },
    props: { json },
  }));

export const GET: APIRoute = ({ props }) =>
  new Response(props.json, { headers: { 'content-type': 'application/json' } });
