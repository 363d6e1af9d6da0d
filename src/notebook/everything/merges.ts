/**
 * How what two devices keep under one key comes together. Nothing that is the reader's own goes; where both have something
 * that only one can be, the own one stays. What there is no room for is counted.
 */
import { readAsides, writeAsides } from '../aside.ts';
import { mostDesigns, readDesigns, type SavedDesign, writeDesigns } from '../designs.ts';
import { mostTries } from '../learning/exercises.ts';
import { decodeNotes, mergeNotes, writeNotes } from '../learning/notes.ts';
import { mergeMeasured } from '../measure/measurements.ts';
import { mergeAnswers, readAnswers, writeAnswers } from '../recall/answers.ts';
import { type Cell, decodeCells, mostCells, writeCells } from '../scratch/cells.ts';

export interface Merged {
  readonly text: string;
  /** Things of the other that found no room. */
  readonly leftOut?: number;
}

/** Puts the text of another device to the own one. */
export type Merge = (own: string, other: string) => Merged;

type Json = Record<string, unknown>;

/** Texts set aside: those of the other stand before the own ones. */
export const mergeAsides: Merge = (own, other) => {
  const mine = readAsides(own);
  const missing = readAsides(other).filter(
    (one) => !mine.some(({ key, text }) => key === one.key && text === one.text),
  );
  return { text: writeAsides([...missing, ...mine]) };
};

/** A record in JSON; an empty one where it is none. */
function recordIn(text: string): Json {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Json) : {};
  } catch {
    return {};
  }
}
const isRecord = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const inside = (value: unknown): Json => (isRecord(value) ? value : {});

export const ownStays: Merge = (own) => ({ text: own });

/** Entries by their name: the own one stays. */
export const mergeByName: Merge = (own, other) => ({
  text: JSON.stringify({ ...recordIn(other), ...recordIn(own) }),
});

/** Measurements and weighings of both. */
export const mergeMeasurements: Merge = (own, other) => ({ text: mergeMeasured(own, other) });

/** Ticks of a box: all of both where the box is the same, else the own ones. */
export const mergeDone: Merge = (own, other) => {
  const [mine, theirs] = [recordIn(own), recordIn(other)];
  const listIn = ({ steps }: Json): unknown[] => (Array.isArray(steps) ? steps : []);
  const both = Object.entries(mine).map(([name, ticks]) => {
    const [here, there] = [inside(ticks), inside(theirs[name])];
    if (here.of !== there.of) return [name, ticks];
    return [name, { ...here, steps: [...new Set([...listIn(here), ...listIn(there)])] }];
  });
  return { text: JSON.stringify({ ...theirs, ...Object.fromEntries(both) }) };
};

/** A step is done where it was done on either device. */
export const mergeProgress: Merge = (own, other) => {
  const [mine, theirs] = [recordIn(own), recordIn(other)];
  const [here, there] = [inside(mine.lessons), inside(theirs.lessons)];
  const lessons = Object.fromEntries(
    [...new Set([...Object.keys(there), ...Object.keys(here)])].map((id) => {
      const [one, two] = [inside(here[id]), inside(there[id])];
      const steps = { ...inside(two.steps), ...inside(one.steps) };
      for (const [step, state] of Object.entries(inside(two.steps)))
        if (state === 'done') steps[step] = state;
      return [id, { ...two, ...one, steps }];
    }),
  );
  return { text: JSON.stringify({ ...theirs, ...mine, lessons }) };
};

export const mergeRecall: Merge = (own, other) => ({
  text: writeAnswers(mergeAnswers(readAnswers(own), readAnswers(other))),
});

export const mergeOwnNotes: Merge = (own, other) => {
  const { notes, leftOut } = mergeNotes(decodeNotes(own), decodeNotes(other));
  return { text: writeNotes(notes), leftOut };
};

/** Tries of the other that are not among the own ones stand before them. */
export const mergeTries: Merge = (own, other) => {
  const listIn = (text: string): unknown[] => {
    try {
      const value: unknown = JSON.parse(text);
      return Array.isArray(value) ? value : [];
    } catch {
      return [];
    }
  };
  const mine = listIn(own);
  const known = new Set(mine.map((one) => JSON.stringify(one)));
  const missing = listIn(other).filter((one) => !known.has(JSON.stringify(one)));
  const room = Math.max(0, mostTries - mine.length);
  const taken = room > 0 ? missing.slice(-room) : [];
  return { text: JSON.stringify([...taken, ...mine]), leftOut: missing.length - taken.length };
};

/** A design whose name is taken by another box gets a number behind it. */
export function addDesigns(own: readonly SavedDesign[], others: readonly SavedDesign[]) {
  const all = [...own];
  let leftOut = 0;
  for (const { name, box } of others) {
    const isSame = (one: SavedDesign) => JSON.stringify(one.box) === JSON.stringify(box);
    if (all.some(isSame)) continue;
    if (all.length >= mostDesigns) {
      leftOut++;
      continue;
    }
    let free = name;
    for (let count = 2; all.some((one) => one.name === free); count++) free = `${name.slice(0, 55)} ${count}`;
    all.push({ name: free, box: free === name ? box : { ...box, name: free } });
  }
  return { designs: all, leftOut };
}

export const mergeDesigns: Merge = (own, other) => {
  const { designs, leftOut } = addDesigns(readDesigns(own).good, readDesigns(other).good);
  return { text: writeDesigns(designs), leftOut };
};

/** Cells of the other that are not among the own ones stand below them. */
export const mergeCells: Merge = (own, other) => {
  const cellsIn = (text: string): readonly Cell[] => {
    const decoded = decodeCells(text, '');
    return decoded.ok ? decoded.cells : [];
  };
  const mine = cellsIn(own);
  const known = new Set(mine.map((one) => JSON.stringify(one)));
  const missing = cellsIn(other).filter((one) => one.text.trim() !== '' && !known.has(JSON.stringify(one)));
  const taken = missing.slice(0, Math.max(0, mostCells - mine.length));
  return { text: writeCells([...mine, ...taken]), leftOut: missing.length - taken.length };
};
