/** Gaps and set-ups of the build sheet as answers, printed as the sheet prints them. */

import { plainly, say, type Words } from '../../box/work/say.ts';
import type { PartOfAnswer } from '../../figures/box/MarkedBox.tsx';
import type { Entry } from './entry.ts';
import type { Own } from './own.ts';

const path = 'build-sheet/';
const kind = 'own';

/** The part a gap or a cut is about, by its first word. */
const partIn = (words: string): PartOfAnswer | undefined =>
  (['bottom', 'lid'] as const).find((part) => words.includes(part));

const gapEntries = ({ work }: Own): Entry[] =>
  (work?.gaps.gaps ?? []).map(({ what, value, note }, index) => {
    const part = partIn(what);
    return {
      id: `own:gap-${index}`,
      kind,
      title: what,
      path,
      says: note,
      rule: what.includes('groove, wider')
        ? 'groove-width-from-the-panel'
        : part === 'lid'
          ? 'lid-clearance'
          : 'gap-beside-the-bottom',
      part: part && { of: part },
      number: () => [value],
    };
  });

/** How the cuts are asked for, by the beginning of their id. */
const cuts: Readonly<Record<string, readonly string[]>> = {
  groove: [
    'fence for the groove',
    'groove width',
    'how wide is the groove',
    'size of my groove',
    'router setting groove',
    'where does the groove go',
  ],
  fingers: ['cutter and jig pin', 'finger set up'],
  lengths: ['stop block setting', 'cut the walls to length'],
};

/** The rule that gives the reason of a cut, by the beginning of its id. */
const rules: Readonly<Record<string, string>> = {
  groove: 'groove-width-from-the-panel',
  tongue: 'groove-width-from-the-panel',
  lengths: 'opposite-walls-from-one-stop',
  fingers: 'finger-fit',
  dovetails: 'dovetail-slope',
  rabbets: 'long-grain-to-long-grain',
  keys: 'keys-and-splines',
  splines: 'keys-and-splines',
  notch: 'thumb-notch',
  saw: 'sawn-off-lid',
  hinges: 'hinges',
  liner: 'lift-off-fit',
};

function setUpEntries({ work }: Own): Entry[] {
  const taken = new Set<string>();
  return (work?.setUps ?? []).map(({ id, cut, settings, note }) => {
    const plain = id.replace(/-\d+$/, '');
    const name = taken.has(plain) ? id : plain;
    taken.add(name);
    const title = plainly(cut, 'mm');
    const part = partIn(title);
    const [first, ...rest] = settings;
    return {
      id: `own:set-up.${name}`,
      kind,
      title: `set-up: ${title}`,
      path,
      says: rest
        .reduce<Words>(
          (words, { what, value }) => say`${words}${words.length > 0 ? '; ' : 'Then '}${what} ${value}`,
          [],
        )
        .concat(rest.length > 0 ? ['. ', ...note] : note),
      asked: [...(cuts[plain.split('-')[0]!] ?? []), ...settings.map(({ what }) => what)],
      rule: rules[plain.split('-')[0]!],
      part: part && { of: part },
      number: () => first && say`${first.what} ${first.value}`,
    };
  });
}

export const ownWork = (own: Own): readonly Entry[] => [...gapEntries(own), ...setUpEntries(own)];
