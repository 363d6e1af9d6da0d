/** The changes that mend a warning, as buttons say them. */
import type { Box } from '../../box/subjects/inputs.ts';
import { fields } from '../../box/subjects/inputs.ts';

/** One change of one input. */
export interface Mend {
  readonly input: keyof Box;
  readonly from: number | string;
  readonly to: number | string;
  /** Everything that changes with it: itself, and what gives way. */
  readonly inputs: Partial<Box>;
}

/** Whether two changes are one. */
export const isSame = (one: Mend, other: Mend) => one.input === other.input && one.to === other.to;

export const labelOf = ({ input }: Mend): string => fields[input].label;
