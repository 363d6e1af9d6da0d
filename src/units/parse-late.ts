/** The reader of typed numbers, as it is fetched late: a file of its own, since what checks sheets has it from the start. */
export { parse } from './parse.ts';
