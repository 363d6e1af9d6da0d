/** The words of all relations, for pages that open a reason. */
import type { APIRoute } from 'astro';
import { reasonsFile } from '../prose/reasons.ts';

export const getStaticPaths = async () => {
  const { name, json } = await reasonsFile;
  return [{ params: { reasons: name.replace(/\.json$/, '') }, props: { json } }];
};

export const GET: APIRoute = ({ props }) =>
  new Response(props.json, { headers: { 'content-type': 'application/json' } });
