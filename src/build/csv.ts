/** Tables as files, written while the site is built. */
import { csvFormat } from 'd3-dsv';

/** Rows as CSV text, with the columns of the first row. */
export const toCsv = (rows: readonly Readonly<Record<string, unknown>>[]): string => csvFormat([...rows]);
