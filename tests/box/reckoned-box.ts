/** The box that the tests of this folder were reckoned for by hand. It is not the site's example, which may change. */
import { bases } from '../../src/notebook/bases.ts';

export const exampleBox = bases[1]!;
