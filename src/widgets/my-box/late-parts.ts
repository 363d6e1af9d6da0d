/** What stands behind folds of the bench: fetched with the first that is opened. */

import { boardPane } from '../../figures/box/glass/board-pane.ts';
import { faceGrain } from '../../figures/views/face-grain.ts';
import { AllNumbers } from './AllNumbers.tsx';
import { Board } from './Board.tsx';
import { Compare } from './Compare.tsx';
import { Contents } from './Contents.tsx';
import { CutList } from './CutList.tsx';
import { Drawings } from './Drawings.tsx';
import { MyBoxes } from './MyBoxes.tsx';
import { NewBox } from './new-box/NewBox.tsx';
import { Share } from './Share.tsx';
import { SquarenessLines } from './SquarenessLines.tsx';

export const lateParts = {
  boardPane,
  faceGrain,
  AllNumbers,
  Board,
  Compare,
  Contents,
  CutList,
  Drawings,
  MyBoxes,
  NewBox,
  Share,
  SquarenessLines,
};
