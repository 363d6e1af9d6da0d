/** Bottom and lid panel as parts: their sizes, shapes and places. */

import { type Block, type Prism, slot } from '../../geometry/solid.ts';
import { volumeOf } from '../../geometry/volume.ts';
import { practice } from '../core/practice.ts';
import { roughSize } from './allowance.ts';
import type { FittedPanel } from './panel-hold.ts';
import { cutFor, type Part } from './part.ts';
import type { Band, Plan } from './plan.ts';

/** Where a panel lies, its tongue between two heights. */
function panelBlock(plan: Plan, band: Band, panel: FittedPanel, low: number, high: number): Block {
  const start =
    band.for === 'lid' && plan.values.kind === 'sliding' ? 0 : plan.wall - band.depth + panel.gapAlong;
  const side = plan.wall - band.depth + panel.gapAcross;
  return { x: [start, start + panel.length], y: [side, side + panel.width], z: [low, high] };
}

/** The bottom as a part; `undefined` where it has no size. */
export function bottomPart(plan: Plan, panel: FittedPanel): Part | undefined {
  const { floor, bottomThickness: thickness, tongue, bottomBand, values } = plan;
  if (!(thickness > 0 && panel.width > 0 && panel.length > 0)) return undefined;
  const block = panelBlock(plan, bottomBand, panel, floor - thickness, floor);
  const finished = { length: panel.length, width: panel.width, thickness };
  const rabbeted = thickness - tongue > 1e-6;
  const solid = {
    block,
    cuts: rabbeted ? cutFor('tongue', edgeRabbets(block, bottomRabbet(plan), floor - tongue)) : [],
  };
  return {
    name: 'bottom',
    label: 'bottom',
    count: 1,
    material: values.bottom,
    grain: 'x',
    finished,
    round: 'down',
    rough: values.bottom === 'solid' ? roughSize(finished, values.planing) : finished,
    pieces: [{ ...solid, opens: false }],
    volume: volumeOf(solid),
    note: rabbeted ? 'Rabbeted underneath on all four edges, so that its tongue enters the groove.' : '',
  };
}

/** Width of the rabbet under the bottom's edges, mm; 0 where there is none. */
export const bottomRabbet = ({ bottomThickness, tongue, bottomBand }: Plan): number =>
  bottomThickness - tongue > 1e-6 ? bottomBand.depth + practice.rabbetBeyondGroove : 0;

function edgeRabbets({ x, y, z }: Block, width: number, top: number): Prism[] {
  const under: readonly [number, number] = [z[0], top];
  const wide = Math.min(width, (x[1] - x[0]) / 2, (y[1] - y[0]) / 2);
  const middle: readonly [number, number] = [y[0] + wide, y[1] - wide];
  return [
    slot({ x, y: [y[0], y[0] + wide], z: under }),
    slot({ x, y: [y[1] - wide, y[1]], z: under }),
    slot({ x: [x[0], x[0] + wide], y: middle, z: under }),
    slot({ x: [x[1] - wide, x[1]], y: middle, z: under }),
  ];
}

/** The lid's panel as a part; `undefined` where it has no size. */
export function lidPart(plan: Plan, panel: FittedPanel, grip: Prism | undefined): Part | undefined {
  const { lidUnder, lidThickness: thickness, lidBand, values } = plan;
  if (!(thickness > 0 && panel.width > 0 && panel.length > 0)) return undefined;
  const finished = { length: panel.length, width: panel.width, thickness };
  const block = panelBlock(plan, lidBand, panel, lidUnder, lidUnder + thickness);
  const solid = { block, cuts: cutFor('grip', grip ? [grip] : []) };
  return {
    name: 'lid',
    label: values.kind === 'sliding' ? 'lid' : 'lid panel',
    count: 1,
    material: values.lid,
    grain: 'x',
    finished,
    round: 'down',
    rough: values.lid === 'solid' ? roughSize(finished, values.planing) : finished,
    pieces: [{ ...solid, opens: true }],
    volume: volumeOf(solid),
    note: values.kind === 'sliding' ? 'Grain along the way it slides.' : '',
  };
}
