/** One edge of a lid in its groove, enlarged, planed to the same play on three days: that day, then the dampest, then the driest. */
import type { Values } from '../../box/whole/index.ts';
import { playAtDriest } from '../../calc/movement/panel.ts';
import { playAtDampest } from '../../calc/movement/panel-play.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';

/** Moisture of the lid on the day it is planed, %. */
const moistureWhen: Readonly<Record<string, (v: Values) => number>> = {
  driest: (v) => v.moistureDry,
  between: (v) => v.moistureToday,
  dampest: (v) => v.moistureDamp,
};

/** The play all are planed to, mm: what the day in between asks for. */
export const planedTo = (v: Values): number => v.lidPlayNeeded;

/** Play on the dampest and on the driest day, mm; below zero it jams. */
export function playsOf(v: Values, option: string): { damp: number; dry: number } {
  const given = { W: v.lidWidth, C: v.movementUp, p: planedTo(v) };
  const then = moistureWhen[option]!(v);
  return {
    damp: playAtDampest.compute({ ...given, u: v.moistureDamp - then }),
    dry: playAtDriest.compute({ ...given, f: then - v.moistureDry }),
  };
}

/** Of those that never jam, the one that is least loose. */
export const bestPlaned = (v: Values): string =>
  Object.keys(moistureWhen)
    .filter((option) => playsOf(v, option).damp >= 0)
    .reduce((best, one) => (playsOf(v, one).dry < playsOf(v, best).dry ? one : best));

const [width, wall, top, row, slot] = [150, 26, 6, 46, 22] as const;
/** Units of the drawing for each millimeter: alike in all three. */
const enlarged = 30;

export function PlanedPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const { damp, dry } = playsOf(v, option);
  const plays = open ? [planedTo(v), damp, dry] : [planedTo(v)];
  const fine = (mm: number) => said(Math.abs(mm), 'length', { as: 'fine' });
  const block = (at: number) => {
    const y = top + at * row;
    return `M2 ${y}H${width - 2}v8H${wall}v${slot}H${width - 2}v8H2z`;
  };
  return (
    <Drawing
      view={[0, 0, width, top + 3 * row]}
      title="A lid in its groove on the day it was planed, on the dampest day and on the driest"
      description={
        open
          ? `On the dampest day it ${damp < 0 ? `lacks ${fine(damp)} and jams` : `has ${fine(damp)} of play`}, on the driest it has ${fine(dry)}.`
          : `It was planed to ${fine(planedTo(v))} of play. The other two days are not drawn yet.`
      }
    >
      {[0, 1, 2].map((at) => {
        const play = plays[at];
        const y = top + at * row + 10;
        return (
          <g key={at}>
            <path class="wood-end" d={block(at)} />
            {play === undefined ? (
              <path class="hidden-line" d={`M${width - 4} ${y}H${wall + 8}v${slot - 4}H${width - 4}`} />
            ) : (
              <path
                class={`${play < 0 ? 'wood jammed' : 'wood'} ${at > 0 ? 'arrives' : ''}`}
                d={`M${width - 2} ${y}H${Math.max(8, Math.min(width - 12, wall + play * enlarged))}v${slot - 4}H${width - 2}`}
              />
            )}
          </g>
        );
      })}
    </Drawing>
  );
}
