/**
 * How bottom and lid panel sit in their grooves: sizes with the gap they need today, and their hold on the driest day.
 * A solid panel keeps a gap across the grain for its wood, cut and air; along it 0.5 mm in all. Plywood keeps 0.5 mm on
 * every edge, or none where it is glued (common practice).
 */
import { equilibriumMoisture, moistureInAir } from '../../calc/moisture.ts';
import { widthFigures } from '../../calc/movement.ts';
import { panelPractice } from '../../calc/panel.ts';
import { fitPanel, type PanelFit } from '../../calc/panel-fit.ts';
import { isRefused, type Refused } from '../../calc/refusal.ts';
import { woodById } from '../woods.ts';
import type { Band, Plan } from './plan.ts';
import { practice } from './practice.ts';

/** A panel in its grooves; mm. What no figure is known for is `undefined`. */
export interface FittedPanel {
  readonly for: 'bottom' | 'lid';
  readonly material: 'solid' | 'plywood';
  readonly glued: boolean;
  /** Along the grain, across it, and thickness of the edge in the groove. */
  readonly length: number;
  readonly width: number;
  readonly tongue: number;
  /** Gap today at each edge, panel central. */
  readonly gapAcross: number;
  readonly gapAlong: number;
  /** Free play across the grain today and on the driest day, both sides together. */
  readonly playToday: number;
  readonly playAtDriest: number | undefined;
  /** Hold in the groove at each side on the driest day: central, and at the worse side when crept to the other. */
  readonly engagementCentral: number | undefined;
  readonly engagementCrept: number | undefined;
  /** The movement behind it, for solid panels that float. */
  readonly fit: PanelFit | undefined;
  /** Why the movement is not known. */
  readonly refused: string | undefined;
}

/** Today's, the driest and the dampest moisture content, %, or why there is none. */
function moistures({ values }: Plan): readonly [number, number, number] | Refused {
  const { temperature, humidityToday, humidityDry, humidityDamp } = values;
  for (const humidity of [humidityToday, humidityDry, humidityDamp]) {
    const found = moistureInAir(temperature, humidity);
    if (isRefused(found)) return found;
  }
  const at = (humidity: number) => equilibriumMoisture(temperature, humidity);
  return [at(humidityToday), at(humidityDry), at(humidityDamp)];
}

/** The movement of a floating solid panel across an opening. */
function solidFit(plan: Plan, band: Band, allowance: number): PanelFit | Refused {
  const moisture = moistures(plan);
  if (isRefused(moisture)) return moisture;
  const wood = woodById(plan.values.species);
  if (!wood) return { refused: 'This wood is not in the tables.' };
  const [today, driest, dampest] = moisture;
  return fitPanel({
    opening: plan.width - 2 * plan.wall,
    grooveDepth: band.depth,
    figures: widthFigures(wood, plan.values.ringAngle),
    today,
    driest,
    dampest,
    allowance,
  });
}

/** The bottom in its groove or rabbet. */
export const fitBottom = (plan: Plan): FittedPanel => {
  const { bottom, bottomFit } = plan.values;
  const along = bottom === 'solid' ? practice.alongGrain / 2 : practice.plywoodRoom;
  return fitted(plan, plan.bottomBand, {
    material: bottom,
    glued: bottomFit === 'glued',
    tongue: plan.tongue,
    free: bottom === 'solid' ? 2 * panelPractice.panelAllowancePerSide : 2 * practice.plywoodRoom,
    start: plan.wall - plan.bottomBand.depth + (bottomFit === 'glued' ? 0 : along),
    alongBothEnds: true,
  });
};

/** The lid's panel: running in its grooves and out over the front, or held in all four walls of the lid. */
export const fitLid = (plan: Plan): FittedPanel => {
  const { lid, kind } = plan.values;
  const sliding = kind === 'sliding';
  const solid = lid === 'solid';
  const along = solid ? practice.alongGrain / 2 : practice.plywoodRoom;
  return fitted(plan, plan.lidBand, {
    material: lid,
    glued: false,
    tongue: plan.lidThickness,
    free: sliding
      ? solid
        ? panelPractice.lidAllowance
        : practice.plywoodLidPlay
      : solid
        ? 2 * panelPractice.panelAllowancePerSide
        : 2 * practice.plywoodRoom,
    // Closed, a sliding lid stops against the bottom of the back's groove, flush with the front.
    start: sliding ? 0 : plan.wall - plan.lidBand.depth + along,
    alongBothEnds: !sliding,
  });
};

function fitted(
  plan: Plan,
  band: Band,
  how: {
    material: 'solid' | 'plywood';
    glued: boolean;
    tongue: number;
    /** Play that must be left on the dampest day, or always for plywood. */
    free: number;
    start: number;
    alongBothEnds: boolean;
  },
): FittedPanel {
  const { material, glued, tongue, start, alongBothEnds } = how;
  const moves = material === 'solid' && !glued;
  const found = moves ? solidFit(plan, band, how.free) : undefined;
  const fit = found && !isRefused(found) ? found : undefined;
  const openingWidth = plan.width - 2 * plan.wall + 2 * band.depth;
  const playToday = fit ? fit.playToday : glued ? 0 : how.free;
  const still = moves ? undefined : playToday;
  const back = plan.wall - band.depth;
  return {
    for: band.for,
    material,
    glued,
    length: plan.length - start - (alongBothEnds ? start : back),
    width: openingWidth - playToday,
    tongue,
    gapAcross: playToday / 2,
    gapAlong: alongBothEnds ? start - back : 0,
    playToday,
    playAtDriest: fit ? fit.playAtDriest : still,
    engagementCentral: fit ? fit.engagementCentral : still === undefined ? undefined : band.depth - still / 2,
    engagementCrept: fit ? fit.engagementCrept : still === undefined ? undefined : band.depth - still,
    fit,
    refused: found && isRefused(found) ? found.refused : undefined,
  };
}
