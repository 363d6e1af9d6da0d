/** Several lengths in a row, in the reader's units: "172 mm × 112 mm × 56 mm". */
import { Quantity } from './Quantity.tsx';

interface Props {
  /** mm */
  of: readonly number[];
  /** What goes in is written as it was typed, not on the reader's ruler. */
  asTyped?: boolean;
  /** Stands between two of them; a word in a sentence. */
  between?: string;
}

export const Sizes = ({ of, between = ' × ', asTyped }: Props) => (
  <>
    {of.map((size, index) => (
      <span key={index}>
        {index > 0 && between}
        <Quantity value={size} kind="length" {...(!asTyped && { as: 'size' })} />
      </span>
    ))}
  </>
);
