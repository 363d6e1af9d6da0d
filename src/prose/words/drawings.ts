/** The small drawing of a word, by its id in the glossary, where a drawing says more than the line. */

import type { SmallFigure } from '../../figures/parts/SmallDrawing.tsx';
import StageGlueUp from '../../figures/square/stage-glue-up.tsx';
import { bentWords, hingeWords, ringWords } from '../../figures/words/boards.tsx';
import { cornerWords, dovetailWords, fingerWords } from '../../figures/words/corners.tsx';
import { edgeWords, faceWords, wallWords } from '../../figures/words/in-section.tsx';
import { insideWords, lidWords, panelWords } from '../../figures/words/inside.tsx';
import { jigWords, leafWords } from '../../figures/words/shop.tsx';

export const wordDrawings: Readonly<Record<string, SmallFigure>> = {
  ...wallWords,
  ...edgeWords,
  ...faceWords,
  ...cornerWords,
  ...fingerWords,
  ...dovetailWords,
  ...ringWords,
  ...bentWords,
  ...hingeWords,
  ...insideWords,
  ...lidWords,
  ...panelWords,
  ...jigWords,
  ...leafWords,
  diagonal: StageGlueUp,
};
