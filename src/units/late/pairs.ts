/**
 * Facts of the trade are written by an author as a pair of native values, "6.5 mm (1/4 in)" or "5 in (127 mm)". Here such
 * a pair is found in a text, so that each reader can be shown the own one.
 */

const number = String.raw`(?:\d+\s\d+/\d+|\d+/\d+|\d+(?:[.,]\d+)?)`;
/** Numbers with a unit at least at the end: "200 by 120 mm", "0.2 to 0.3 mm", "0.175 mm over 100 mm". */
const amount = (units: string) =>
  String.raw`(?:${number}(?:\s(?:${units}))?\s(?:by|to|or|and|over|×)\s)*${number}\s(?:${units})(?![\w²³])`;
const metric = amount('mm|cm|m|kg|g|N|MPa|kPa|°C|L|ml');
const imperial = amount('in|ft|lb|lbf|oz|psi|°F|fl oz');
const roughly = '(?:about )?';
const pairs = new RegExp(
  String.raw`(${metric})\s\((${roughly}${imperial})\)|(${imperial})\s\((${roughly}${metric})\)`,
  'g',
);

export interface NativePair {
  readonly mm: string;
  readonly inch: string;
}

/** A text taken apart into words and pairs of native values, in order; together they say what it said. */
export function withPairs(text: string): readonly (string | NativePair)[] {
  const found: (string | NativePair)[] = [];
  let end = 0;
  for (const { 0: all, 1: mm, 2: inches, 3: inch, 4: millimeters, index } of text.matchAll(pairs)) {
    found.push(text.slice(end, index), { mm: mm ?? millimeters ?? '', inch: inches ?? inch ?? '' });
    end = index + all.length;
  }
  return [...found, text.slice(end)].filter((piece) => piece !== '');
}
