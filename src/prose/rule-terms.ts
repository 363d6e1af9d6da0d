/** The words a rule file may use for its stage, its part of the box and its evidence. */

/** Stages of the work, in order. */
export const stages = [
  'contents and size',
  'proportion',
  'wood and air',
  'stock',
  'walls',
  'joints',
  'grooves',
  'bottom',
  'lid',
  'glue-up',
  'surface and finish',
  'care',
] as const;

export const parts = ['whole box', 'walls', 'corners', 'grooves', 'bottom', 'lid', 'contents'] as const;

export const evidences = ['published', 'geometry', 'derived', 'common practice', 'from memory'] as const;

/** Where the rules of a part, and those of a stage, stand on the page of all rules. */
export const anchorOfPart = (part: (typeof parts)[number]) => part.replaceAll(' ', '-');
export const anchorOfStage = (stage: (typeof stages)[number]) => `stage-${stage.replaceAll(' ', '-')}`;

/** What of the drawing a part is, and what it is called there; the contents are looked for inside, and the whole box is all of it. */
export const drawnParts = {
  contents: { name: 'inside', drawn: 'inside' },
  walls: { name: 'walls', drawn: 'walls' },
  corners: { name: 'corners', drawn: 'corners' },
  grooves: { name: 'grooves', drawn: 'grooves' },
  bottom: { name: 'bottom', drawn: 'bottom' },
  lid: { name: 'lid', drawn: 'lid' },
  'whole box': { name: 'whole box', drawn: undefined },
} as const satisfies Readonly<Record<(typeof parts)[number], object>>;
