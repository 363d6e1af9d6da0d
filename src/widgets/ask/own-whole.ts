/** The box as a whole as answers: its sizes, what it holds, what it weighs, as the head of the build sheet prints them. */
import { say, type Words } from '../../box/work/say.ts';
import type { PartOfAnswer } from '../../figures/box/MarkedBox.tsx';
import type { Entry } from './entry.ts';
import type { Own } from './own.ts';
import { inARow } from './texts.ts';

const lengths = (...values: readonly number[]): Words =>
  inARow(values.map((value) => ({ value, kind: 'length', as: 'size' })));

interface Says {
  readonly title: string;
  readonly says: string;
  readonly asked: readonly string[];
  readonly of?: PartOfAnswer;
  readonly rule?: string;
}

const entry = (id: string, { of, ...says }: Says, number: () => Words | undefined): Entry => ({
  id: `own:${id}`,
  kind: 'own',
  path: 'build-sheet/',
  ...says,
  part: of && { of },
  number,
});

export function ownWhole({ values: v, design: { inside, insideVolume, mass } }: Own): readonly Entry[] {
  return [
    entry(
      'outside',
      {
        title: 'size of the box, outside',
        says: 'Length, width and height.',
        asked: ['outside size', 'how big is it', 'overall dimensions', 'size of it', 'dimensions', 'sizes'],
        of: 'box',
        rule: 'outside-is-inside-plus-two-walls',
      },
      () => lengths(v.outsideLength, v.outsideWidth, v.outsideHeight),
    ),
    entry(
      'inside',
      {
        title: 'size of the box, inside',
        says: 'Clear length, width and height.',
        asked: ['inside size', 'how big inside', 'inside dimensions'],
        of: 'inside',
        rule: 'design-from-the-inside',
      },
      () => inside && lengths(inside.length, inside.width, inside.height),
    ),
    entry(
      'insideVolume',
      {
        title: 'what it holds',
        says: 'The room inside.',
        asked: ['inside volume', 'capacity'],
        of: 'inside',
        rule: 'walls-cost-inside-volume',
      },
      () => (insideVolume === undefined ? undefined : [{ value: insideVolume, kind: 'volume', digits: 0 }]),
    ),
    entry(
      'mass',
      {
        title: 'weight of the empty box',
        says: 'All its parts together, at 12 % moisture.',
        asked: ['how heavy is it', 'mass'],
      },
      () => (mass === undefined ? undefined : say`about ${{ value: mass, kind: 'mass', digits: 0 }}`),
    ),
  ];
}
