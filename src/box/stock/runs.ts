/** Which parts are cut from one strip, and which strips share a thickness. */

import type { Piece } from '../../calc/board/board-layout.ts';
import { trimSpare } from '../../calc/board/stock.ts';
import { toDecimals } from '../../units/index.ts';
import type { Part, PartName } from '../design/part.ts';
import type { Box } from '../subjects/inputs.ts';

/** Parts of one thickness: one list of pieces for each slice that must be matched, mostly a single one. */
export interface Group {
  readonly thickness: number;
  readonly faces: readonly (readonly Piece[])[];
  /** Walls that had to be cut into several runs: the length one run would have needed, mm. */
  readonly cutUp: number | undefined;
}

/** Names of whole runs: all four walls, or the two halves of a pair. */
export const wallRuns = {
  strip: 'walls',
  pair: ['walls, first slice', 'walls, second slice'],
} as const satisfies {
  strip: string;
  pair: readonly string[];
};

/** So small that no board is opened for them. */
export const isFromOffcuts = ({ name }: Part): boolean => name === 'keys' || name === 'splines';

/** Four walls of the box, of a lift-off lid, of a liner: the parts whose figure should go on round the corners. */
const rings = ['', 'lid-', 'liner-'] as const;
const strip = ['front', 'right', 'back', 'left'] as const;
/** Opened like a book, the second slice lies on its face: its walls follow each other in the other direction. */
const halves = [
  ['front', 'right'],
  ['left', 'back'],
] as const;

/** A run of parts that shares its spare: half of it at either end. */
function run(name: string, parts: readonly Part[]): Piece[] {
  return parts.map((part, index) => {
    const ends = (index === 0 ? 1 : 0) + (index === parts.length - 1 ? 1 : 0);
    return {
      name: part.name,
      length: part.finished.length + (ends * trimSpare) / 2,
      width: part.rough.width,
      run: name,
    };
  });
}

const lengthOf = (pieces: readonly Piece[], kerf: number) =>
  pieces.reduce((sum, { length }) => sum + length, 0) + Math.max(0, kerf) * Math.max(0, pieces.length - 1);

/** The runs of four walls: whole where the board is long enough, else in halves, else each wall alone. */
function runsOf(name: string, parts: readonly Part[], { boardLength, kerf }: Box) {
  const whole = run(name, parts);
  const needed = lengthOf(whole, kerf);
  if (needed <= boardLength + 1e-9 || parts.length < 2) return { pieces: whole, cutUp: undefined };
  const middle = Math.ceil(parts.length / 2);
  const pieces: Piece[] = [parts.slice(0, middle), parts.slice(middle)].flatMap(
    (half, index) => runsOf(`${name}, part ${index + 1}`, half, { boardLength, kerf } as Box).pieces,
  );
  return { pieces, cutUp: needed };
}

const thicknessOf = ({ finished }: Part) => toDecimals(finished.thickness, 3);

/**
 * The ways to share slices among thicknesses, those that plane the least away first: every thickness its own slices,
 * or thinner parts beside thicker ones. Each way gives for a thickness that of the slice it comes from.
 */
export function sharings(parts: readonly Part[]): ((thickness: number) => number)[] {
  const all = [...new Set(parts.map(thicknessOf))].sort((a, b) => b - a);
  const ways = Array.from({ length: 2 ** Math.max(0, all.length - 1) }, (_, joins) => {
    const homes: number[] = [];
    all.forEach((thickness, index) => {
      const joined = index > 0 && (joins >> (index - 1)) & 1;
      homes.push(joined ? homes[index - 1]! : thickness);
    });
    const lost = all.reduce((sum, thickness, index) => sum + homes[index]! - thickness, 0);
    return { lost, home: (thickness: number) => homes[all.indexOf(thickness)] ?? thickness };
  });
  return ways.sort((a, b) => a.lost - b.lost).map(({ home }) => home);
}

/** All parts that are sawn from boards, by the thickness of their slice, the walls first. */
export function groupsOf(parts: readonly Part[], box: Box, home: (thickness: number) => number): Group[] {
  const sliceOf = (part: Part) => home(thicknessOf(part));
  return [...new Set(parts.map(sliceOf))].map((thickness) => {
    const own = parts.filter((part) => sliceOf(part) === thickness);
    const find = (name: string) => own.find((part) => part.name === (name as PartName));
    const ringsHere = rings.filter((ring) => strip.every((wall) => find(ring + wall)));
    const matched = box.wallsFrom === 'bookmatched' && ringsHere.some((ring) => ring !== 'liner-');
    const inRings = new Set(ringsHere.flatMap((ring) => strip.map((wall): string => ring + wall)));
    const loose = own
      .filter(({ name }) => !inRings.has(name))
      .map((part): Piece => ({ name: part.name, length: part.rough.length, width: part.rough.width }));
    const sets = matched ? halves : [strip];
    const faces = sets.map((walls, face) =>
      ringsHere.map((ring) => {
        const base = matched ? wallRuns.pair[face]! : wallRuns.strip;
        return runsOf(
          ring + base,
          walls.flatMap((wall) => find(ring + wall) ?? []),
          box,
        );
      }),
    );
    return {
      thickness,
      faces: faces.map((runs, face) => [
        ...runs.flatMap(({ pieces }) => pieces),
        ...(face === 0 ? loose : []),
      ]),
      cutUp: faces.flat().find(({ cutUp }) => cutUp !== undefined)?.cutUp,
    };
  });
}
