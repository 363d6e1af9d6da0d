/** Numbers as running text has them. */
const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** A count of 0 or more: in words up to ten, then in digits. */
export const inWords = (count: number): string => words[count] ?? String(count);
