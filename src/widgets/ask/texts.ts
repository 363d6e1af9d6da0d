/** A number of an answer as both readers read it. */
import { tell } from '../../box/core/tell.ts';
import type { Verdict } from '../../box/core/verdict.ts';
import type { Amount, Words } from '../../box/work/say.ts';
import { bothUnits } from '../../figures/parts/Quantity.tsx';
import type { BothTexts } from './entry.ts';

const ofWords = (words: Words): BothTexts =>
  words.reduce<BothTexts>(
    ({ mm, inch }, part) => {
      if (typeof part === 'string') return { mm: mm + part, inch: inch + part };
      const { value, kind, ...options } = part;
      const texts = bothUnits(value, kind, options);
      return { mm: mm + texts.mm, inch: inch + (texts.inch ?? texts.mm) };
    },
    { mm: '', inch: '' },
  );

const isVerdict = (number: Words | Verdict): number is Verdict => 'check' in number;

/** In words, or as a check tells what it measured. */
export const textsOf = (number: Words | Verdict): BothTexts =>
  isVerdict(number)
    ? { mm: tell(number, 'mm').measured, inch: tell(number, 'inch').measured }
    : ofWords(number);

/** Several numbers with a sign of times between them. */
export const inARow = (amounts: readonly Amount[]): Words =>
  amounts.flatMap((amount, index) => (index === 0 ? [amount] : [' × ', amount]));
