/** Works out cells one after another, from the top down: a name given in one may be used below it. */
import type { MathNode } from 'mathjs';
import { type Shown, show } from './amounts.ts';
import type { InputWords } from './call.ts';
import type { Cell } from './cells.ts';
import { type NamedNumber, relationNamed } from './names.ts';
import { type Plotted, plotted } from './plot.ts';
import { Trouble } from './trouble.ts';
import { type Own, read, stopped, workOut } from './work-out.ts';

export type CellResult =
  | { readonly type: 'value'; readonly shown: Shown }
  | { readonly type: 'plot'; readonly plot: Plotted }
  | { readonly type: 'trouble'; readonly message: string }
  /** Something is still to be filled in. */
  | { readonly type: 'asks'; readonly message: string }
  | { readonly type: 'empty' };

/** How long one cell may take, ms. Past it the page ends the worker itself, see `run.ts`. */
const longestCell = 1000;
/** Characters of a result. */
const longestResult = 200;

/** Behind the number of a relation that gives a plain one: percent, degrees Celsius. Nothing where it goes into a sum. */
function plainUnitOf(node: MathNode): string {
  const { type, fn } = node as MathNode & { fn?: { name?: string } };
  const result = type === 'FunctionNode' ? relationNamed(fn?.name ?? '')?.result : undefined;
  if (result?.points) return '\u00a0points';
  return result?.unit === '%' ? '\u00a0%' : result?.unit === 'degC' ? '\u00a0°C' : '';
}
const withNote = (shown: Shown, unit: string): Shown =>
  unit ? { mm: shown.mm + unit, inch: shown.inch + unit } : shown;

const isLastFunction = (node: MathNode): boolean => {
  const { type, blocks } = node as MathNode & { blocks?: { node: MathNode }[] };
  return (blocks?.at(-1)?.node.type ?? type) === 'FunctionAssignmentNode';
};

export function cellResult(
  cell: Cell,
  around: { numbers: ReadonlyMap<string, NamedNumber>; words: InputWords; own: Own },
): CellResult {
  if (cell.type === 'note' || cell.text.trim() === '') return { type: 'empty' };
  const surroundings = { ...around, until: performance.now() + longestCell };
  try {
    if (cell.type === 'plot' && !(cell.over.trim() && cell.from.trim() && cell.to.trim()))
      return { type: 'asks', message: 'Write the name that changes, from where, and to where.' };
    if (cell.type === 'plot') return { type: 'plot', plot: plotted(cell, surroundings) };
    const node = read(cell.text);
    const shown = withNote(show(workOut(node, surroundings)), plainUnitOf(node));
    if (isLastFunction(node))
      return { type: 'value', shown: { mm: 'kept as a function', inch: 'kept as a function' } };
    if (Object.values(shown).some((text: string) => text.length > longestResult))
      return { type: 'trouble', message: 'The result is too long to be written.' };
    return { type: 'value', shown };
  } catch (error) {
    if (error instanceof Trouble) return { type: 'trouble', message: error.message };
    if (error instanceof RangeError) return { type: 'trouble', message: stopped };
    return { type: 'trouble', message: 'This cannot be worked out. Write it in smaller pieces.' };
  }
}
