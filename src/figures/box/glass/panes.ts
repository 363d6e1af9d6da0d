/** The panes of each part of the bench. */
import type { Design } from '../../../box/design/design.ts';
import type { Pane, Planned } from './pane.ts';
import { airPane, bottomPane, groovePanes, lidPane } from './panel-panes.ts';
import { accuracyPane, cornersPane, insidePane, wallsPane } from './whole-panes.ts';

const panes = {
  inside: insidePane,
  walls: wallsPane,
  corners: cornersPane,
  grooves: groovePanes,
  bottom: bottomPane,
  lid: lidPane,
  air: airPane,
  accuracy: accuracyPane,
} as const satisfies Readonly<Record<string, (design: Planned, aspect: number) => Pane | readonly Pane[]>>;

/** Whether a design has room between its walls. */
export const isPlanned = (design: Design): design is Planned => design.plan !== undefined;

/**
 * What the glass shows of a part; nothing where there is no box.
 * @param aspect width to height of the room for it
 */
export const panesOf = (part: keyof typeof panes, design: Design, aspect: number): readonly Pane[] =>
  isPlanned(design) ? [panes[part](design, aspect)].flat() : [];
