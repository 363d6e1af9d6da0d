/** What makes sheets and lays them out: one file, which a page fetches with its first sheets. */
import { fileNameOf } from '../../../notebook/files.ts';
import { download } from '../../my-box/download.ts';
import { keysCsv, type Made, makeSheets } from './make.ts';
import { Printed } from './Printed.tsx';

const saveKeys = (made: Made): void =>
  download(fileNameOf({ name: `keys ${made.choices.className}` }, 'csv'), 'text/csv', keysCsv(made));

export { makeSheets, Printed, saveKeys };
