/**
 * From what a maker types to what mathjs reads: inch marks, mixed fractions, raised figures. Signs that mean something
 * else in mathjs than on paper are refused with what to type instead.
 */
import { Trouble } from './trouble.ts';

/** Characters in a cell. */
export const longestText = 500;

const signs: readonly (readonly [RegExp, string])[] = [
  // A remark for whoever reads.
  [/#.*$/s, ''],
  [/[\s\u00a0\u202f]+/g, ' '],
  [/½/g, ' 1/2'],
  [/¼/g, ' 1/4'],
  [/¾/g, ' 3/4'],
  [/[×·∙]/g, '*'],
  [/÷/g, '/'],
  [/[−–]/g, '-'],
  [/²/g, '^2'],
  [/³/g, '^3'],
  [/°\s?([CF])\b/g, ' deg$1'],
  [/°/g, ' deg'],
  [/(?<=[\d)]) ?["″”]/g, ' inch'],
  [/(?<=[\d)]) ?['′’]/g, ' ft'],
  // 2 3/8 is two and three eighths.
  [/(?<![\w.^])(\d+) (\d+) ?\/ ?(\d+)/g, '($1+$2/$3)'],
  // To mathjs the bare word is an operator.
  [/(?<![\w.])in\b/g, 'inch'],
  // Five feet three is a sum, not a product.
  [/([\d.]+|\([\d+/]+\)) ?(?:ft|feet) ([\d.]+|\([\d+/]+\)) ?inch\b/g, '($1 ft + $2 inch)'],
];

const refused: readonly (readonly [RegExp, string])[] = [
  [/%/, 'Percent are plain numbers here: write 45 for 45 %, and 0.45 for the share.'],
  [/["'`″′]/, 'Text in quotes is not used here. An inch mark stands behind a number: 12".'],
  [/__/, 'Two underlines in a row are not used here.'],
  [
    /(?<!(?<![\p{L}\p{N}_.])(?:to|and|or|not))(?<=[\p{L}\p{N}_)]) (?=[\d.])/u,
    'Write + or * between two amounts: 2 mm + 3 mm.',
  ],
  [/[[\]]/, 'Square brackets are not used here. To see many values, add a plot.'],
  [/:(?=[^}]*$)(?<!\{[^}]*)(?<!\?.*)/, 'A colon makes no list here. To see many values, add a plot.'],
  [/!(?!=)/, '“!” is not used here.'],
];

/** The text for mathjs. @throws Trouble where it cannot be meant */
export function tidy(text: string): string {
  if (text.length > longestText)
    throw new Trouble(`This is ${text.length} characters long; a cell holds ${longestText}. Use several.`);
  let clean = text;
  for (const [sign, plain] of signs) clean = clean.replace(sign, plain);
  for (const [sign, why] of refused) if (sign.test(clean)) throw new Trouble(why);
  return clean.trim();
}
