/**
 * Sixty questions as people type them at a bench or on a phone, each with who asks.
 *
 * They were written down before anything of the site's content was read, so they are a measure of Ask and not
 * a copy of its words. Never change one so that it passes: mend the content. Misspellings are the asker's.
 *
 * Who asks: a `learner` wants to understand, a `look-up` reader has the work in hand and wants one number,
 * a `first` builder makes a first box, a `teacher` plans a class.
 */

/** The kinds of reader who ask. */
export type Asker = 'learner' | 'look-up' | 'first' | 'teacher';

/** Question, who asks; in the order of a box's life, from its contents to ten years later. */
export const LEARNERS: readonly (readonly [question: string, who: Asker])[] = [
  // What goes in, how big
  ['how much bigger than the stuff inside should a box be', 'first'],
  ['clearance around tea bags', 'look-up'],
  ['what proportions look good', 'learner'],
  ['golden ratio box', 'learner'],
  ['how big shoud a ring box be', 'first'],
  // Wood
  ['can i use pine', 'first'],
  ['best wood for a first box', 'teacher'],
  ['does wood from the big box store need to sit before i cut it', 'first'],
  ['moisture content', 'look-up'],
  ['why does wood move across the grain and not along it', 'learner'],
  ['quarter sawn or flat sawn for the lid', 'look-up'],
  ['which way should the grain run on the sides', 'first'],
  ['how much wood do i need', 'teacher'],
  ['is cedar safe for storing tea', 'look-up'],
  ['my board is cupped', 'first'],
  // Thickness
  ['how thick for a box 10 inches long', 'first'],
  ['side thickness', 'look-up'],
  ['is 1/4 too thin for the sides', 'look-up'],
  ['how thin can dividers be', 'look-up'],
  ['my box looks clunky', 'learner'],
  // Joints
  ['strongest corner joint', 'learner'],
  ['are mitres strong enough with just glue', 'learner'],
  ['gaps in my miters', 'first'],
  ['how many dovetails', 'look-up'],
  ['dovetail angle softwood', 'look-up'],
  ['box joint finger width', 'look-up'],
  ['finger joints too tight wont go together', 'first'],
  ['what is a rabbet', 'learner'],
  ['rebate depth', 'look-up'],
  ['do i need splines', 'first'],
  // Bottom
  ['is 6mm ply ok for the bottom', 'look-up'],
  ['how deep is the groove for the bottom', 'look-up'],
  ['should i glue the bottom in', 'first'],
  ['bottom rattles', 'learner'],
  ['sides split at the bottom after a year', 'learner'],
  // Lid and hardware
  ['why is my lid stuck in july', 'learner'],
  ['lid 1/16 too wide what now', 'first'],
  ['how loose should a lift off lid fit', 'look-up'],
  ['sliding lid gap', 'look-up'],
  ['lid wont close flush hinge side', 'first'],
  ['what size hinges', 'look-up'],
  ['screw split the wood', 'first'],
  ['pilot hole for brass screws', 'look-up'],
  // Cutting and gluing up
  ['order of cutting the sides', 'teacher'],
  ['opposite sides not the same length', 'first'],
  ['box is out of square', 'first'],
  ['what glue', 'first'],
  ['how long to leave clamps on', 'look-up'],
  ['does end grain glue hold', 'learner'],
  ['glue squeeze out stains', 'first'],
  ['can i do it with hand tools only', 'teacher'],
  ['how do i cut small parts safely on the table saw', 'teacher'],
  ['do i need a dust mask', 'teacher'],
  // Finish
  ['how many coats', 'look-up'],
  ['what grit do i sand to', 'look-up'],
  ['why does the inside smell of oil', 'learner'],
  ['oily rags fire', 'teacher'],
  // Years later
  ['will the box still fit in ten years', 'learner'],
  ['crack in the lid after winter', 'learner'],
  ['finsh gone sticky', 'learner'],
];
