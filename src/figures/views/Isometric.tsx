/** The closed box from above and in front of it, left side to the right: equal scale along all three axes. */
import type { Design } from '../../box/design/design.ts';
import { onSheet } from '../../geometry/view.ts';
import { visible } from '../../geometry/visible.ts';
import { described, hasHole, isometric, shownParts } from '../box/from-design.ts';
import { fitted, placed } from '../box/paths.ts';
import { SolidPicture } from '../box/SolidPicture.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { faceGrain } from './face-grain.ts';
import { HoleLabel } from './HoleLabel.tsx';

const sheet = 350;

export interface IsometricProps {
  design: Design;
  /** Draw the growth rings on the faces; takes several times as long. */
  grain?: boolean;
}

export function Isometric({ design, grain = false }: IsometricProps) {
  const seen = visible(isometric, shownParts(design));
  const placing = fitted(seen, [6, 6], [sheet - 12, 260]);
  const { outsideLength: length, outsideWidth: width, outsideHeight: height, frontHole } = design.values;
  const at = (x: number, y: number, z = 0) => placed(placing, onSheet(isometric, [x, y, z]));
  const [frontX, frontY] = at(0, width / 2);
  const [sideX, sideY] = at(length / 2, 0);
  // Over the left corner, so far up that the upper edge, rising to the right, passes below the words.
  const holeLabel = at(0, width, height)[1] - 72;
  const top = design.plan && hasHole(design.values) ? Math.min(0, holeLabel - 10) : 0;
  return (
    <Drawing
      view={[0, top, sheet, placing.height + 26 - top]}
      title="The box, closed"
      description={described(design)}
    >
      <SolidPicture
        seen={seen}
        placing={placing}
        grain={grain ? faceGrain(design, seen, isometric, placing) : ''}
      />
      {design.plan && (
        <>
          {hasHole(design.values) && (
            <HoleLabel
              value={frontHole}
              at={[2, holeLabel]}
              from={[8, 8]}
              hole={at(0, width - design.plan.wall / 2, design.plan.frontTop + frontHole / 2)}
            />
          )}
          <Label x={frontX - 8} y={frontY + 16} anchor="end">
            front
          </Label>
          <Label x={sideX + 8} y={sideY + 16} anchor="start">
            left side
          </Label>
        </>
      )}
    </Drawing>
  );
}
