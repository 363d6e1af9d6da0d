/** The woods a box may be made of: those of which both movement coefficients are read, derived or from memory, with the figures a box needs. */
import packed from 'virtual:woods';
import type { Wood } from '../../calc/core/wood.ts';
import { unpack } from './packed-woods.ts';

/** In the order of their table names: "Alder, red" first. */
export const woods: readonly Wood[] = unpack(packed);

const byId = new Map(woods.map((wood) => [wood.id, wood]));

/** The wood of that id ("black-walnut"), or `undefined` for an id that is not known. */
export const woodById = (id: string): Wood | undefined => byId.get(id);
