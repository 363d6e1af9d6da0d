/** The rubric as a file: each thing to measure with its levels, and room for what was measured. */
import { getCollection } from 'astro:content';
import { toCsv } from '../../build/csv.ts';
import { rubricRows } from '../../prose/class/rubric.ts';

export async function GET(): Promise<Response> {
  const rows = rubricRows(
    (await getCollection('rubric')).map(({ data }) => data).sort((a, b) => a.order - b.order),
  );
  return new Response(toCsv(rows), { headers: { 'content-type': 'text/csv; charset=utf-8' } });
}
