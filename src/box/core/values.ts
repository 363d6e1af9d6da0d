/** Everything known about a box: what the reader decided, the figures of its wood, and all that follows. */

import type { AirResults } from '../subjects/air/results.ts';
import type { WaitResults } from '../subjects/air/wait.ts';
import type { GroovesResults } from '../subjects/grooves/results.ts';
import type { JointsResults } from '../subjects/joints/results.ts';
import type { LidRunResults } from '../subjects/lid/results.ts';
import type { MovementResults } from '../subjects/movement/results.ts';
import type { ProportionResults } from '../subjects/proportion/results.ts';
import type { SizeResults } from '../subjects/size/results.ts';
import type { WallsResults } from '../subjects/walls/results.ts';
import type { WoodFigures } from '../wood/figures.ts';
import type { Box } from './box.ts';

export interface Values
  extends Box,
    WoodFigures,
    SizeResults,
    ProportionResults,
    WallsResults,
    GroovesResults,
    AirResults,
    WaitResults,
    MovementResults,
    LidRunResults,
    JointsResults {}

/** Names of the computed numbers. */
export type ResultName = Exclude<keyof Values, keyof Box | keyof WoodFigures>;
