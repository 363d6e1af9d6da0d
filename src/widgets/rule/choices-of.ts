/** Everything that was chosen from a few words for a box, as one text: while it stands, the same inputs move a number. */
import { type Box, fields } from '../../box/subjects/inputs.ts';

const choices = (Object.keys(fields) as (keyof Box)[]).filter((name) => fields[name].type === 'choice');

export const choicesOf = (box: Box): string => choices.map((name) => box[name]).join();
