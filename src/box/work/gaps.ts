/** The gaps to leave, and the air they assume: without the humidity a gap is only half a number. */

import { practice } from '../core/practice.ts';
import type { Design } from '../design/design.ts';
import type { FittedPanel } from '../design/panel-hold.ts';
import { type Amount, fine, gap } from './say.ts';

export interface Gap {
  readonly what: string;
  readonly value: Amount;
  /** What it does over the year, or why it is there. */
  readonly note: string;
}

export interface Gaps {
  readonly gaps: readonly Gap[];
  /** Air the gaps assume: % relative humidity today, driest, dampest; °C. */
  readonly air: {
    readonly today: number;
    readonly driest: number;
    readonly dampest: number;
    readonly temperature: number;
  };
}

const hold = (value: number) => fine(value, 'down');

/** The rows of one panel in its grooves. */
function rows(panel: FittedPanel | undefined, name: string, slides: boolean): Gap[] {
  if (!panel || panel.glued) return [];
  const { gapAcross, gapAlong, playToday, engagementCentral, engagementCrept, material } = panel;
  const year =
    material === 'plywood'
      ? 'Plywood: the same all year.'
      : 'Today’s gap; it closes in damp air, opens in dry.';
  const least = slides ? engagementCrept : engagementCentral;
  return [
    slides
      ? { what: `${name}, play beside it, both sides together`, value: gap(playToday), note: year }
      : { what: `${name}, gap at each side across the grain`, value: gap(gapAcross), note: year },
    ...(gapAlong > 0
      ? [
          {
            what: `${name}, gap at each end along the grain`,
            value: gap(gapAlong),
            note: material === 'plywood' ? year : 'Wood hardly moves along the grain.',
          },
        ]
      : []),
    ...(least === undefined
      ? []
      : [
          {
            what: `${name}, hold in the groove on the driest day`,
            value: hold(least),
            note: slides ? 'At the worse side: a lid creeps to the other.' : 'At each side, held central.',
          },
        ]),
  ];
}

/** Every gap of the box. */
export function gapsOf(design: Design): Gaps {
  const { box, plan, bottom, lid, lidRun } = design;
  const { humidityToday, humidityDry, humidityDamp, temperature } = box;
  const sliding = box.kind === 'sliding';
  return {
    gaps: [
      ...rows(bottom, 'bottom', false),
      ...(plan && box.bottomSeat === 'groove'
        ? [
            {
              what: 'bottom’s groove, wider than the tongue by',
              value: gap(practice.bottomSlip),
              note:
                box.bottom === 'plywood' && plan.bottomThickness <= box.bottomTongue
                  ? 'Measure the real sheet first.'
                  : 'The edge is fitted to the groove.',
            },
          ]
        : []),
      ...rows(lid, sliding ? 'lid' : 'lid panel', sliding),
      ...(lidRun ? [{ what: 'lid, thinner than its groove by', value: gap(lidRun.slip), note: '' }] : []),
      ...(box.kind === 'lift-off'
        ? [
            {
              what: 'lid around its liner, on each side',
              value: gap(box.lidRoom),
              note: 'After the finish has dried.',
            },
          ]
        : []),
    ],
    air: { today: humidityToday, driest: humidityDry, dampest: humidityDamp, temperature },
  };
}
