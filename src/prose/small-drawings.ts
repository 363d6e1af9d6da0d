/** The small drawing of each lesson, by the lesson's slug; it stands in `figures/S/small-slug.tsx`. */

import { exampleBox } from '../box/subjects/example.ts';
import { evaluate } from '../box/whole/index.ts';
import type { SmallFigure } from '../figures/parts/SmallDrawing.tsx';

const files = import.meta.glob<{ default: SmallFigure }>('../figures/*/small-*.tsx', { eager: true });

export const smallDrawings: Readonly<Record<string, SmallFigure>> = Object.fromEntries(
  Object.entries(files).map(([path, file]) => [path.replace(/^.*\/small-|\.tsx$/g, ''), file.default]),
);

/** What they are drawn from: the example as the site has it. */
export const exampleValues = evaluate(exampleBox);
