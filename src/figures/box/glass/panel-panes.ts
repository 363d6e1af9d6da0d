/** The glass over the grooves, and over lid and bottom in them: a cut across the length, at the left side. */
import type { Measure, Pane, Place, Planned } from './pane.ts';
import { cutAcross } from './pane.ts';

/** At least so much is seen beside the outer face of the wall, as a multiple of its thickness. */
const least = 2.3;

/** How far the window reaches from the outer face, so that it fills its pane, mm. */
const reachOf = ({ plan }: Planned, high: number, aspect: number) =>
  Math.min(plan.width / 2, Math.max(least * plan.wall, high * aspect));

const mouthOf = (left: number, low: number, right: number, high: number): readonly Place[] => [
  [right, -high],
  [left, -high],
  [left, -low],
  [right, -low],
];

/** The groove of the lid, with the wood above it and its depth. */
function lidGroove(design: Planned, aspect: number): Pane {
  const { height: H, wall: t, lidBand: band } = design.plan;
  const foot = band.low - 0.7 * t;
  const window = [0, -H, reachOf(design, H - foot, aspect), -foot] as const;
  const root = t - band.depth;
  return {
    caption: 'lid’s groove',
    window,
    cuts: cutAcross(design, window),
    measures: [
      { from: [0, -H], to: [0, -band.high], away: -12, value: design.values.lidLip },
      { from: [root, -H], to: [t, -H], away: -12, value: design.values.lidGrooveDepth },
    ],
    edges: [mouthOf(root, band.low, t, band.high)],
  };
}

/** The groove or rabbet of the bottom, with the wood below it and its depth. */
function bottomGroove(design: Planned, aspect: number): Pane {
  const { wall: t, floor, bottomBand: band } = design.plan;
  const top = floor + 0.7 * t;
  const window = [0, -top, reachOf(design, top, aspect), 0] as const;
  const root = t - band.depth;
  const below: Measure[] =
    band.seat === 'groove'
      ? [{ from: [0, -band.low], to: [0, 0], away: -12, value: design.values.bottomLip }]
      : [];
  return {
    caption: band.seat === 'groove' ? 'bottom’s groove' : 'bottom’s rabbet',
    window,
    cuts: cutAcross(design, window),
    measures: [...below, { from: [root, 0], to: [t, 0], away: 12, value: design.values.grooveDepth }],
    edges: [mouthOf(root, band.low, t, band.high)],
  };
}

/** @param aspect of the room for both, width to height; side by side or one over the other */
export const groovePanes = (design: Planned, aspect: number): readonly Pane[] => {
  const each = aspect > 1.5 ? aspect / 2 : aspect * 2;
  return [lidGroove(design, each), bottomGroove(design, each)];
};

/** A panel's edge in its groove: what it is thick, and the gap left beside it today. */
function panelPane(design: Planned, of: 'lid' | 'bottom', aspect: number): Pane {
  const { plan, values: v } = design;
  const { height: H, wall: t, floor } = plan;
  const isLid = of === 'lid';
  const band = isLid ? plan.lidBand : plan.bottomBand;
  const panel = isLid ? design.lid : design.bottom;
  const low = isLid ? band.low : floor - plan.bottomThickness;
  const thick = isLid ? plan.lidThickness : plan.bottomThickness;
  const [top, foot] = isLid ? [H, low - t] : [floor + t, Math.max(0, low - t)];
  const right = reachOf(design, top - foot, aspect);
  const window = [0, -top, right, -foot] as const;
  const gap = panel?.gapAcross ?? 0;
  const edge = t - band.depth + gap;
  const beside = Math.min(0.75 * right, 3 * t);
  /** The edge that enters the groove may be thinner than the rest. */
  const [from, to] = isLid ? [low, low + thick] : [floor - plan.tongue, floor];
  return {
    caption: isLid
      ? 'lid in its groove'
      : band.seat === 'groove'
        ? 'bottom in its groove'
        : 'bottom in its rabbet',
    window,
    cuts: cutAcross(design, window),
    measures: [
      {
        from: [beside, -(low + thick)],
        to: [beside, -low],
        away: 0,
        value: isLid ? v.lidThickness : v.bottomThickness,
        numberLeft: true,
      },
      ...(gap > 0
        ? [
            {
              from: [edge - gap, isLid ? -from : -to] as const,
              to: [edge, isLid ? -from : -to] as const,
              away: isLid ? 16 : -16,
              value: gap,
              before: 'gap ',
              as: 'exact' as const,
            },
          ]
        : []),
    ],
    edges: [
      [
        [right, -to],
        [edge, -to],
        [edge, -from],
        [isLid ? right : t, -from],
      ],
    ],
  };
}

export const lidPane = (design: Planned, aspect: number): Pane => panelPane(design, 'lid', aspect);
export const bottomPane = (design: Planned, aspect: number): Pane => panelPane(design, 'bottom', aspect);

/** The panel that moves most, today and on the dampest day. */
export function airPane(design: Planned, aspect: number): Pane {
  const { values: v } = design;
  const isLid = v.kind === 'sliding';
  const pane = panelPane(design, isLid ? 'lid' : 'bottom', aspect);
  const swelling = (isLid ? v.lidSwelling : v.bottomSwelling) / 2;
  const [edge] = pane.edges ?? [];
  if (!edge || !(swelling > 0)) return { ...pane, edges: [], measures: [] };
  return {
    ...pane,
    caption: 'dashed: dampest day',
    note: { before: 'swells a side ', value: swelling },
    measures: pane.measures.filter(({ before }) => before !== undefined),
    edges: [],
    dashed: [edge.slice(1, 3).map(([x, y]) => [x - swelling, y] as const)],
  };
}
