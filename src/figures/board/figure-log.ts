/** The log of the figures on boards: made up. Its rings are wide and it tapers much, so that arches fit on a short board. */
import { madeUpLog } from '../../calc/board/rings.ts';

export const figureLog = madeUpLog(12, { ringWidth: 4, taper: 0.02 });
