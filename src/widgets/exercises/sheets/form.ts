/** The form of the sheets: what its page knows of the exercises and blocks, and what is missing in it. Pure. */
import { learnerOf } from '../../../exercises/core/learner.ts';
import { mostLearners, type SheetChoices } from '../../../notebook/learning/sheets.ts';

export interface Listed {
  readonly id: string;
  readonly title: string;
}

/** A block of the course with its exercises, by id. */
export interface ListedBlock extends Listed {
  readonly exercises: readonly string[];
}

/** The block whose exercises these are, all of it and nothing else. */
export const blockOf = (blocks: readonly ListedBlock[], chosen: readonly string[]): string =>
  blocks.find(
    ({ exercises }) => exercises.length === chosen.length && exercises.every((id) => chosen.includes(id)),
  )?.id ?? '';

/** How many learners a text means, or undefined. */
function learnersIn(text: string): number | undefined {
  const learners = /^\s*\d{1,2}\s*$/.test(text) ? Number(text) : 0;
  return learners >= 1 && learners <= mostLearners ? learners : undefined;
}

/** Choices that sheets can be made of, or what to do first. */
export function checked(
  choices: Omit<SheetChoices, 'learners'>,
  learners: string,
): SheetChoices | { readonly missing: string } {
  const count = learnersIn(learners);
  const named = learnerOf(choices.className, '1');
  if (!named) return { missing: 'Write the name of the class first.' };
  if (count === undefined)
    return { missing: `Write how many learners: a whole number from 1 to ${mostLearners}.` };
  if (choices.exercises.length === 0) return { missing: 'Choose at least one exercise.' };
  return { ...choices, className: named.className, learners: count };
}
