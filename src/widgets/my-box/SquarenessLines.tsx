/** The formulas of squareness with the numbers of this box, each with its reason. */
import type { Design } from '../../box/design/design.ts';
import { cutOf } from '../../box/design/expected.ts';
import type { Plan } from '../../box/design/plan.ts';
import { work } from '../../calc/core/working.ts';
import {
  diagonalDifference,
  endStep,
  mitreGapAdded,
  mitreGapOfLength,
  mitreGapRandom,
} from '../../calc/square/squareness.ts';
import type { UnitSystem } from '../../units/index.ts';
import { RelationLine } from '../kit/ResultLine.tsx';

export type Planned = Design & { readonly plan: Plan };

export function SquarenessLines({ design, units }: { design: Planned; units: UnitSystem }) {
  const { plan, box } = design;
  const shown = { kind: 'length', digits: 2, units } as const;
  const e = box.angleError;
  return (
    <div>
      {cutOf(design).cut.mitred ? (
        <>
          <RelationLine
            {...shown}
            label="last corner, all cuts off the same way"
            working={work(mitreGapAdded, { t: plan.wall, e })}
            rule="eight-cuts-of-a-miter"
          />
          <RelationLine
            {...shown}
            label="last corner, each cut off its own way"
            working={work(mitreGapRandom, { t: plan.wall, e })}
            rule="eight-cuts-of-a-miter"
          />
          <RelationLine
            {...shown}
            label="miter that unequal lengths hold open"
            working={work(mitreGapOfLength, { d: 2 * box.lengthError })}
          />
        </>
      ) : (
        <RelationLine
          {...shown}
          label="step of an end out of square"
          working={work(endStep, { w: plan.height, e })}
          rule="first-end-square-before-the-second"
        />
      )}
      <RelationLine
        {...shown}
        label="difference of the diagonals, racked by that angle"
        working={work(diagonalDifference, {
          a: plan.length - 2 * plan.wall,
          b: plan.width - 2 * plan.wall,
          e,
        })}
      />
    </div>
  );
}
