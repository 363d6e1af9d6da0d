/** Everything known about a box: what the reader decided, the figures of its wood, and all that follows. */
import type { Box } from './box.ts';
import type { AirResults } from './results/air.ts';
import type { GroovesResults } from './results/grooves.ts';
import type { JointsResults } from './results/joints.ts';
import type { LidRunResults } from './results/lid-run.ts';
import type { MovementResults } from './results/movement.ts';
import type { ProportionResults } from './results/proportion.ts';
import type { SizeResults } from './results/sizes.ts';
import type { WaitResults } from './results/wait.ts';
import type { WallsResults } from './results/walls.ts';
import type { WoodFigures } from './results/wood.ts';

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
