/** What is worked out beside the page, in a worker: questions to the whole calculation that take longer than a frame. */

import { type Bands, bandsOf } from '../../box/design/bands.ts';
import { type NewBoxAnswers, newBox } from '../../box/design/new-box.ts';
import { type Change, smallestChanges } from '../../box/design/smallest-change.ts';
import { type OntoRuler, toRuler } from '../../box/design/to-ruler.ts';
import type { Box, NumberName } from '../../box/subjects/inputs.ts';
import { wholeModel } from '../../box/whole/index.ts';
import type { Refused } from '../../calc/core/refusal.ts';
import { type RulerName, rulers } from '../../units/index.ts';

/** Answers by the name of the question. All of it can be sent from a worker to a page. */
export interface Answers {
  /** The band of one number. */
  bands: Bands;
  /** What mends one rule, the smallest first. */
  changes: Change[];
  /** The whole box on a ruler. */
  'to-ruler': OntoRuler;
  /** A box from three answers; the box of the question does not matter. */
  'new-box': Box | Refused;
}

interface Asked {
  bands: { readonly of: NumberName };
  /** Id of a check. */
  changes: { readonly of: string };
  'to-ruler': { readonly of?: undefined };
  'new-box': { readonly of: NewBoxAnswers };
}

export type Question<Name extends keyof Answers = keyof Answers> = {
  readonly [N in Name]: { readonly ask: N; readonly box: Box; readonly ruler: RulerName } & Asked[N];
}[Name];

export function answer(question: Question): Answers[keyof Answers] {
  const { box } = question;
  const ruler = rulers[question.ruler];
  switch (question.ask) {
    case 'bands':
      return bandsOf(box, question.of, ruler);
    case 'changes': {
      const check = wholeModel.checks.find(({ id }) => id === question.of);
      return check ? smallestChanges(box, check, ruler) : [];
    }
    case 'to-ruler':
      return toRuler(box, ruler);
    case 'new-box':
      return newBox(question.of, ruler);
  }
}
