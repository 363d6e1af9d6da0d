/** Every wood of the tables with at least one figure, for the woods page alone: most pages need only `woods.ts`. */
import packed from 'virtual:all-woods';
import type { Wood } from '../../calc/core/wood.ts';
import { unpack } from './packed-woods.ts';

/** In the order of their table names. */
export const allWoods: readonly Wood[] = unpack(packed);
