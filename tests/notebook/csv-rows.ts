/** Rows of a table of `content/data` by the names of its columns. */
import { csvParse } from 'd3-dsv';

export const csvRows = (text: string): Record<string, string | undefined>[] => [...csvParse(text)];
