/** What a page about a trouble must say: what one sees, its numbers, and causes with the check that tells them apart. */
import { reference } from 'astro:content';
import { z } from 'astro/zod';
import { cautionList } from './caution-schema.ts';
import { parts } from './prose/rule-terms.ts';

/** As people type it: small letters, and what stands in a word. */
export const typed = z.array(z.string().regex(/^[a-z0-9][a-z0-9 '-]*$/)).min(1);

/** The order of causes is common practice. */
export const troubleSchema = z
  .strictObject({
    /** What one sees: "The lid sticks". */
    title: z.string(),
    /** The likeliest cause and what to do first, in a sentence or two. */
    says: z.string(),
    asked: typed.min(5),
    /** What of the box it is pointed at by, and how the box opens that has it, where only one kind has. */
    part: z.enum(parts),
    kind: z.enum(['sliding', 'lift-off', 'sawn']).optional(),
    /** The joint it is drawn with, where only that joint has it. */
    joint: z.enum(['mitre']).optional(),
    /** Ids of the checks whose numbers for the reader's box come first, and names of further results. */
    checks: z.array(z.string()).max(3).default([]),
    results: z.array(z.string()).max(3).default([]),
    /** Said in the place of numbers, where no size of a box has to do with it. */
    silent: z.string().optional(),
    /** The rule whose small figure shows one of the causes. */
    figure: reference('rules').optional(),
    /** The likeliest first: `tell` is the check that tells it from the others. */
    causes: z
      .array(
        z.strictObject({ cause: z.string(), tell: z.string(), cure: z.string(), rule: reference('rules') }),
      )
      .min(2)
      .max(5),
    /** What makes it worse. */
    never: z.array(z.string()).min(1).max(3),
    /** Rules behind it, beside those of its causes. */
    rules: z.array(reference('rules')).default([]),
    lesson: reference('lessons').optional(),
    /** Where a cure can hurt: names of `src/box/work/cautions.ts`, or a case of its own. */
    cautions: cautionList,
  })
  .refine(
    ({ checks, results, silent }) => checks.length + results.length > 0 !== (silent !== undefined),
    'A trouble names checks or results, or else says why it has none.',
  );
