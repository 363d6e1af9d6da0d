/** What makes a box impossible by its sizes. */
import type { Values } from '../../whole/index.ts';
import { both, type Condition } from '../refusal.ts';
import { linerFills } from './opening.ts';

/** Least inside that is offered as a cure, mm: ours. */
const someRoom = 10;
/** Less than this is no room, mm: an outside so little larger than its walls can come out equal to them. */
const hair = 1e-6;

/** The input that one size follows from. */
const leading =
  (
    contents: 'contentsLength' | 'contentsWidth' | 'contentsHeight',
    wanted: 'wantedLength' | 'wantedWidth' | 'wantedHeight',
  ) =>
  (v: Values) =>
    v.sizeFrom === 'contents' ? contents : wanted;

const noRoom = (
  id: string,
  name: string,
  inside: 'clearLength' | 'clearWidth' | 'insideHeight',
  field: ReturnType<typeof leading>,
): Condition => ({
  id,
  breaks: (v) =>
    !(v[inside] > hair) && !lidFills(v, inside) && !linerFills(v, Math.min(v.insideLength, v.insideWidth)),
  what: (v) => `No room is left inside: the inside ${name} comes to ${both(v[inside])}.`,
  field,
  limit: 'least',
  // Every size follows its input millimeter for millimeter.
  to: (v) => v[field(v)] + someRoom - v[inside],
});

/** Height for lid and inside together. */
const spaceForLid = (v: Values) => v.insideHeight + v.lidThickness;
/** Whether a thinner lid alone would leave room inside. */
const lidFills = (v: Values, inside: string) =>
  inside === 'insideHeight' && v.sizeFrom === 'outside' && spaceForLid(v) - someRoom >= 3;

/** A block of contents that is larger than the clear inside, as a liner may make it. */
const tooLarge = (
  id: string,
  word: string,
  contents: 'contentsLength' | 'contentsWidth',
  inside: 'clearLength' | 'clearWidth',
  wanted: 'wantedLength' | 'wantedWidth',
): Condition => {
  const excess = (v: Values) => v[contents] + 2 * Math.max(0, v.lining) - v[inside];
  return {
    id,
    breaks: (v) => v[inside] > hair && excess(v) > 1e-6,
    what: (v) =>
      `The contents are too ${word}: with all that lines the box, ${both(excess(v))} more room is needed.`,
    field: (v) => (v.sizeFrom === 'contents' ? 'clearance' : wanted),
    limit: 'least',
    to: (v) => (v.sizeFrom === 'contents' ? v.clearance + excess(v) / 2 : v[wanted] + excess(v)),
  };
};

export const sizeConditions: readonly Condition[] = [
  {
    id: 'no-wall',
    breaks: (v) => !(v.wall > 0),
    what: () => 'Without thickness there is no wall.',
    field: () => 'wall',
    limit: 'least',
    to: () => 6,
  },
  noRoom('no-length-inside', 'length', 'clearLength', leading('contentsLength', 'wantedLength')),
  noRoom('no-width-inside', 'width', 'clearWidth', leading('contentsWidth', 'wantedWidth')),
  {
    id: 'lid-thicker-than-space',
    breaks: (v) => !(v.insideHeight > 0) && lidFills(v, 'insideHeight'),
    what: (v) =>
      `The lid is ${both(v.lidThickness)} thick, and the height leaves ${both(spaceForLid(v))} for lid and inside together.`,
    field: () => 'lidThickness',
    limit: 'most',
    to: (v) => spaceForLid(v) - someRoom,
  },
  noRoom('no-height-inside', 'height', 'insideHeight', leading('contentsHeight', 'wantedHeight')),
  tooLarge('contents-too-long', 'long', 'contentsLength', 'clearLength', 'wantedLength'),
  tooLarge('contents-too-wide', 'wide', 'contentsWidth', 'clearWidth', 'wantedWidth'),
  {
    id: 'contents-too-high',
    breaks: (v) => v.insideHeight > 0 && v.contentsHeight + Math.max(0, v.lining) - v.insideHeight > 1e-6,
    what: (v) => `The contents are ${both(v.contentsHeight)} high, the inside ${both(v.insideHeight)}.`,
    field: (v) => (v.sizeFrom === 'contents' ? 'headroom' : 'wantedHeight'),
    limit: 'least',
    to: (v) =>
      (v.sizeFrom === 'contents' ? v.headroom : v.wantedHeight) +
      v.contentsHeight +
      Math.max(0, v.lining) -
      v.insideHeight,
  },
];
