/** A sentence of the work with its numbers in the reader's units. */
import type { Words } from '../../box/work/say.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';

export function Phrase({ words }: { words: Words }) {
  return (
    <>{words.map((part, index) => (typeof part === 'string' ? part : <Quantity key={index} {...part} />))}</>
  );
}
