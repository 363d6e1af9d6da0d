/** The way to an input in my box, beside a number that it moves. */
import { type Box, fields } from '../../box/subjects/inputs.ts';
import { href } from '../kit/href.ts';

export const ChangeIt = ({ input, words = 'change' }: { input: keyof Box; words?: string }) => (
  <a href={href(`my-box/#${input}`)} aria-label={`${words}: ${fields[input].label}, in my box`}>
    {words}
  </a>
);
