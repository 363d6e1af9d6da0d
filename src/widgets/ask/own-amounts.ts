/** What the box takes: glue, finish, wood; and the air it is planned for. As the build sheet prints them. */
import { say, type Words } from '../../box/work/say.ts';
import type { KnownRange } from '../../calc/glue/glue.ts';
import type { Kind as NumberKind } from '../../units/index.ts';
import type { Entry } from './entry.ts';
import type { Own } from './own.ts';

const path = 'build-sheet/';
const kind = 'own';

const range = ({ low, high }: KnownRange, of: NumberKind, digits: 0 | 1 | 2): Words =>
  say`${{ value: low, kind: of, digits }} to ${{ value: high, kind: of, digits }}`;

function glueAndFinish({ work }: Own): Entry[] {
  const amounts = work?.amounts;
  if (!amounts) return [];
  const { cornerArea, otherArea, glue, clampedArea, force, finishArea, finish } = amounts;
  return [
    {
      id: 'own:glue',
      kind,
      title: 'glue for my box',
      path,
      says: say`On ${{ value: cornerArea + otherArea, kind: 'area' }}, spread ${glue.known}; pour more, some stays on the brush.`,
      asked: ['how much glue', 'amount of glue'],
      rule: 'dry-fit-in-half-the-open-time',
      number: () => range(glue, 'mass', 2),
    },
    {
      id: 'own:clamps',
      kind,
      title: 'clamp force on a corner',
      path,
      says: say`On ${{ value: clampedArea, kind: 'area' }}, by ${force.known}. Tape or a strap gives far less and holds where the joint fits.`,
      asked: ['clamp pressure', 'how hard to clamp', 'clamping force'],
      rule: 'thin-even-film',
      number: () => range(force, 'force', 0),
    },
    {
      id: 'own:finish',
      kind,
      title: 'finish for a coat',
      path,
      says: say`On ${{ value: finishArea, kind: 'area' }}, wiped to brushed, ${finish.known}.`,
      asked: ['how much finish', 'how much varnish', 'amount of finish'],
      rule: 'finish-slows-does-not-stop',
      number: () => range(finish, 'volume', 1),
    },
  ];
}

/** Several in words: "1 board", "2 slices". */
const counted = (number: number, word: string) => `${number} ${word}${number === 1 ? '' : 's'}`;

const board = (own: Own): Entry => ({
  id: 'own:board',
  kind,
  title: 'wood for my box',
  path,
  get says() {
    const { box, stock } = own;
    const sizes = say`Of ${{ value: box.boardLength, kind: 'length' }} × ${{ value: box.boardWidth, kind: 'length' }} × ${{ value: box.boardThickness, kind: 'length' }}, ${counted(stock.slices.length, 'slice')}.`;
    return say`${sizes}${stock.plywood.length > 0 ? ' Plywood is not counted.' : ''}${stock.shortages.map(({ what, fix }) => ` ${what} ${fix}`).join('')}`;
  },
  asked: ['how much wood do i need', 'how many boards', 'board size', 'material for my box'],
  rule: 'cut-oversize-and-rest',
  number: () => (own.design.parts.length > 0 ? [counted(own.stock.boards, 'board')] : undefined),
});

const humidity = ({ box }: Own): Entry => ({
  id: 'own:humidity',
  kind,
  title: 'humidity my box is planned for',
  path,
  says: say`Today, at ${{ value: box.temperature, kind: 'temperature', digits: 0 }}; in its year from ${percent(box.humidityDry)} to ${percent(box.humidityDamp)}. Every gap assumes it.`,
  asked: ['which humidity', 'what humidity did i use', 'humidity today', 'relative humidity'],
  rule: 'write-the-humidity',
  number: () => [percent(box.humidityToday)],
});
const percent = (value: number) => ({ value, kind: 'percent', digits: 0 }) as const;

export const ownAmounts = (own: Own): readonly Entry[] => [...glueAndFinish(own), board(own), humidity(own)];
