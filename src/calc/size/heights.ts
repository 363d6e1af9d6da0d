/**
 * Heights of a box, from the table up.
 *
 *   height = lip + tongue + inside + lid + lip
 */
import { relation } from '../core/relation.ts';

const size = { unit: 'mm', range: [1, 2000] } as const;
const part = { unit: 'mm', range: [0, 100] } as const;

/** Inside height above a block of contents: room on one side only. */
export const roomAbove = relation({
  id: 'room-above',
  title: 'Inside height from the contents',
  result: { symbol: 'h', name: 'inside height', unit: 'mm' },
  inputs: { c: { ...size, name: 'height of the contents' }, r: { ...part, name: 'room above them' } },
  expression: 'c + r',
  compute: ({ c, r }) => c + r,
  evidence: 'geometry',
  source: 'The contents stand on the bottom, so the room is only above.',
});

/** Inside height over a lined floor. */
export const roomAboveLining = relation({
  id: 'room-above-lining',
  title: 'Inside height from the contents, with a lining',
  result: { symbol: 'h', name: 'inside height', unit: 'mm' },
  inputs: { ...roomAbove.inputs, f: { name: 'lining on the floor', unit: 'mm', range: [0, 10] } },
  expression: 'c + r + f',
  compute: ({ c, r, f }) => c + r + f,
  evidence: 'geometry',
  source: 'The contents stand on the lining, the lining on the bottom.',
});

const stackParts = {
  m_b: { ...part, name: 'wood below the bottom groove', tex: 'm_b' },
  b: { ...part, name: 'edge of the bottom' },
  d: { ...part, name: 'lid thickness' },
  m_d: { ...part, name: 'wood above the lid groove', tex: 'm_d' },
} as const;

/** Outside height of a sliding-lid box: a stack of five. */
export const heightStack = relation({
  id: 'height-stack',
  title: 'Outside height, a stack of five',
  result: { symbol: 'H', name: 'outside height', unit: 'mm' },
  inputs: { ...stackParts, h: { ...size, name: 'inside height' } },
  expression: 'm_b + b + h + d + m_d',
  compute: ({ m_b, b, h, d, m_d }) => m_b + b + h + d + m_d,
  evidence: 'geometry',
  source: 'Everything between the table and the top edge, added up.',
});

/** Height of the walls as their corners are joined: a lift-off lid has walls of its own, a sawn one is glued up higher by the saw cut. */
export const jointedHeight = relation({
  id: 'jointed-height',
  title: 'Height of the walls as they are joined',
  result: { symbol: 'H_j', name: 'height of the joined walls', unit: 'mm' },
  inputs: {
    H: { ...size, name: 'outside height' },
    h: { ...part, name: 'height of a lift-off lid' },
    k: { name: 'saw cut that frees a sawn lid', unit: 'mm', range: [0, 10] },
  },
  expression: 'H - h + k',
  compute: ({ H, h, k }) => H - h + k,
  evidence: 'geometry',
  source: 'What is sawn away later has to be there when the corners are cut.',
});

/** Inside height left of a given outside height. */
export const insideHeight = relation({
  id: 'inside-height',
  title: 'Inside height from the outside',
  result: { symbol: 'h', name: 'inside height', unit: 'mm' },
  inputs: { H: { ...size, name: 'outside height' }, ...stackParts },
  expression: 'H - m_b - b - d - m_d',
  compute: ({ H, m_b, b, d, m_d }) => H - m_b - b - d - m_d,
  evidence: 'geometry',
  source: 'The outside height less the four thicknesses that stand in it.',
});
