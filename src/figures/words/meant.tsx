/** What a word means in its small drawing: outlined in heavy ink, so that nothing depends on color. */
import type { Values } from '../../box/whole/index.ts';
import type { SmallFigure } from '../parts/SmallDrawing.tsx';

/** The area that is meant, as the data of a path. */
export const Meant = ({ d }: { d: string }) => <path class="meant" d={d} />;

/** A drawing for each of several words, by the same numbers. */
export const drawnFor = <Name extends string>(
  names: readonly Name[],
  draw: (name: Name, values: Values) => ReturnType<SmallFigure>,
): Readonly<Record<Name, SmallFigure>> =>
  Object.fromEntries(
    names.map((name) => [name, ({ values }: { values: Values }) => draw(name, values)]),
  ) as Readonly<Record<Name, SmallFigure>>;
