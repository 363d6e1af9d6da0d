/** The cut list as answers, printed as the build sheet prints it. */
import { type Part, type Size, wallNames } from '../../box/design/part.ts';
import { shownSize, sides } from '../../box/design/shown-size.ts';
import type { PartOfAnswer } from '../../figures/box/MarkedBox.tsx';
import type { Entry } from './entry.ts';
import { checkOf, type Own } from './own.ts';
import { inARow } from './texts.ts';

const path = 'build-sheet/';

/** What a part is for a drawing; keys, splines and liners are small and many. */
const markOf = ({ name }: Part): PartOfAnswer | undefined =>
  /^(liner|lid)-|^(keys|splines)$/.test(name) ? undefined : (name as PartOfAnswer);

/** A wall stands on its edge: what the cut list calls its width is its height. */
const isWall = ({ name }: Part) => /(^|-)(front|back|left|right)$/.test(name);

/** Which rule speaks about a side of a part, and the input that its check judges. */
const spokenOf = {
  'wall.thickness': ['wall-thickness', 'wall'],
  'bottom.thickness': ['bottom-thickness', 'bottomThickness'],
  'bottom.width': ['gap-beside-the-bottom', undefined],
  'lid.width': ['lid-clearance', undefined],
} as const;

function judgedBy({ values }: Own, part: Part, side: keyof Size): Pick<Entry, 'rule' | 'check'> {
  const isOfBox = (wallNames as readonly string[]).includes(part.name);
  const [rule, input] = spokenOf[`${isOfBox ? 'wall' : part.name}.${side}` as keyof typeof spokenOf] ?? [];
  // A part may come out otherwise than its input asks; then the check speaks of another number.
  const isSame = input && Math.abs(values[input] - part.finished[side]) < 1e-6;
  return { rule, check: isSame ? checkOf(input, values)?.id : undefined };
}

function entriesOf(own: Own, part: Part, id: string): Entry[] {
  const mark = markOf(part);
  const rounded = part.round === 'down' ? ', rounded down so that it goes in' : '';
  const from = `From the cut list${rounded}.${part.note ? ` ${part.note}` : ''}`;
  const whole: Entry = {
    id,
    kind: 'own',
    title: part.count > 1 ? `${part.label}: size of each` : `${part.label}: size`,
    path,
    says: `Length, width and thickness. ${from}`,
    asked: [`dimensions of my ${part.label}`],
    part: mark && { of: mark },
    number: () => inARow(sides.map((side) => shownSize(part, 'finished', side))),
  };
  const each = sides.map((side): Entry => {
    const stands = isWall(part) && side === 'width';
    return {
      id: `${id}.${side}`,
      kind: 'own',
      title: `${part.label}: ${stands ? 'height' : side}`,
      path,
      says: `${stands ? 'In the cut list its width. ' : ''}${from}`,
      asked: [`${side} of my ${part.label}`, ...(stands ? [`how high is my ${part.label}`] : [])],
      part: mark && { of: mark, side },
      number: () => [shownSize(part, 'finished', side)],
      ...judgedBy(own, part, side),
    };
  });
  return [whole, ...each];
}

export const ownParts = (own: Own): readonly Entry[] =>
  own.design.parts.flatMap((part, index, all) => {
    // The splines of a lid carry the name of those of the box.
    const isFirst = all.findIndex(({ name }) => name === part.name) === index;
    return entriesOf(own, part, isFirst ? `own:${part.name}` : `own:${part.name}-${index}`);
  });
