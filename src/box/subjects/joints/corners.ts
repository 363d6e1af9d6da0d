/** What kind of corner a box has. */
import type { Box } from '../inputs.ts';

/** Whether the front may end inside one of its own fingers: under a sliding lid it is lower than the sides. */
export const frontCutsFingers = ({ kind, joint }: Pick<Box, 'kind' | 'joint'>): boolean =>
  kind === 'sliding' && joint === 'finger';

/** Whether the walls meet at 45°. */
export const isMitered = ({ joint }: Pick<Box, 'joint'>): boolean =>
  joint === 'mitre' || joint === 'keyed-mitre' || joint === 'splined-mitre';
