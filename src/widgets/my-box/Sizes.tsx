/** Several lengths in a row, in the reader's units: "172 mm × 112 mm × 56 mm". */
import { Quantity } from '../../figures/parts/Quantity.tsx';

interface Props {
  /** mm */
  of: readonly number[];
  /** Stands between two of them; a word in a sentence. */
  between?: string;
}

export const Sizes = ({ of, between = ' × ' }: Props) => (
  <>
    {of.map((size, index) => (
      <span key={index}>
        {index > 0 && between}
        <Quantity value={size} kind="length" />
      </span>
    ))}
  </>
);
