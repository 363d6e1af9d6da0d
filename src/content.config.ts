/**
 * What lessons, rules, sources, words and troubles must say about themselves. Schemas are strict: a misspelt key stops the
 * build. Over 150 lines: Astro wants every collection in this file.
 */

import { defineCollection, reference } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { relations } from './calc/index.ts';
import { cautionList } from './caution-schema.ts';
import { blockSchema, rubricSchema, toolSchema } from './class-schema.ts';
import { type LessonStage, lessonStages } from './prose/lesson-terms.ts';
import { answers } from './prose/physics.ts';
import { evidences, parts, stages } from './prose/rule-terms.ts';
import { sourceSchema } from './source-schema.ts';
import { troubleSchema, typed } from './trouble-schema.ts';

const lessons = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/lessons' }),
  schema: z.strictObject({
    title: z.string(),
    /** Place in the course, from 1. */
    order: z.number().int().positive(),
    /** Stage of the work; those of one stage follow one another. */
    stage: z.enum(Object.keys(lessonStages) as LessonStage[]),
    /** The question the lesson answers, as a learner would ask it. */
    question: z.string(),
    /** What it comes to, in one sentence, for lists and search engines. */
    summary: z.string(),
    /** Its steps, four to seven, in order: what is asked, and in a few words for the list of contents. */
    steps: z
      .array(
        z.strictObject({
          /** Address of the step within its page. */
          id: z.string().regex(/^[a-z0-9-]+$/),
          ask: z.string(),
          short: z.string().max(24),
          /** Its margin: rules it rests on, words of the glossary, where its numbers are from. */
          rests: z.array(reference('rules')).max(3).default([]),
          words: z.array(reference('glossary')).default([]),
          from: z
            .array(z.strictObject({ source: reference('sources'), at: z.string().optional() }))
            .max(3)
            .default([]),
        }),
      )
      .min(4)
      .max(7)
      .optional(),
    /** What stands in the scratch cell at its end: a relation of its rules, called with names of the reader's box. */
    scratch: z.string(),
    /** Rules it teaches. */
    rules: z.array(reference('rules')).min(1),
    /** Questions later lessons ask again. `right` is the index of the right option; `because` is said after either. */
    recall: z
      .array(
        z.strictObject({
          ask: z.string(),
          options: z.array(z.string()).min(2).max(4),
          right: z.number().int().min(0),
          because: z.string(),
        }),
      )
      .min(3),
  }),
});

const rules = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/rules' }),
  schema: z.strictObject({
    /** A few words: "Lip beside a groove". */
    title: z.string(),
    /** The rule in one sentence. */
    claim: z.string(),
    /** When in the work it matters, and on which part of the box. */
    stage: z.enum(stages),
    parts: z.array(z.enum(parts)).min(1),
    /** Two native values, with their unit; the same text twice where no length is in it. */
    usual: z.strictObject({ mm: z.string(), inch: z.string() }),
    evidence: z.array(z.enum(evidences)).min(1),
    /** What happens if it is ignored; when to break it. One or two sentences each. */
    ignored: z.string(),
    exception: z.string(),
    /** Relations of `src/calc` behind it, by id. */
    relations: z.array(z.string()).default([]),
    sources: z.array(reference('sources')).default([]),
    /** Where the work can hurt: names of `src/box/work/cautions.ts`, or a case of its own. */
    cautions: cautionList,
    /** The lesson that teaches it, where there is one. */
    lesson: reference('lessons').optional(),
    /** Printed on the page and run as tests: `relation` of `given` must be `expect`, give or take `within`. */
    examples: z
      .array(
        z
          .strictObject({
            says: z.string(),
            relation: z.string(),
            given: z.record(z.string(), z.number()),
            expect: z.number(),
            within: z.number().positive(),
            source: z.string(),
          })
          .superRefine(({ relation, given }, context) => {
            const inputs = relations.get(relation)?.inputs;
            const names = (of: object) => Object.keys(of).sort().join(', ');
            if (!inputs) context.addIssue(`There is no relation “${relation}”.`);
            else if (names(inputs) !== names(given))
              context.addIssue(`“${relation}” takes ${names(inputs)}; the example gives ${names(given)}.`);
          }),
      )
      .min(1),
  }),
});

const sources = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/sources' }),
  schema: sourceSchema,
});

const words = defineCollection({
  loader: file('content/words/synonyms.yaml'),
  schema: z.strictObject({
    /** Words and phrases that mean the same, the site's own first. */
    same: typed,
  }),
});

const names = z.array(z.string()).min(1).optional();

/** Words of the trade: the one place that says what they mean. */
const glossary = defineCollection({
  loader: file('content/words/glossary.yaml'),
  schema: z.strictObject({
    /** The US word, what it is called in Britain where that differs, and other names. */
    term: z.string(),
    uk: names,
    also: names,
    /** What it means, in a line. */
    means: z.string(),
    /** Where more about it stands, and words beside it. */
    rule: reference('rules').optional(),
    see: z.array(reference('glossary')).min(1).optional(),
    /** How texts use it, where its names alone would find too little or too much. */
    found: z.array(z.string()).optional(),
  }),
});

/** What is often heard about boxes, and what physics says to it. */
const heard = defineCollection({
  loader: file('content/physics/heard.yaml'),
  schema: z.strictObject({
    heard: z.string(),
    stands: z.enum(answers),
    /** `{name}` in it is the result of a relation below, `{name.t}` what was put in for t. */
    because: z.string(),
    numbers: z.record(
      z.string(),
      z.strictObject({
        relation: z.string(),
        given: z.record(z.string(), z.number()),
        /** What is put in instead for a reader in inches. */
        inch: z.record(z.string(), z.number()).optional(),
      }),
    ),
    rule: reference('rules'),
    sources: z.array(reference('sources')).default([]),
  }),
});

/** What could not be verified. */
const open = defineCollection({
  loader: file('content/physics/open.yaml'),
  schema: z.strictObject({
    open: z.string(),
    because: z.string(),
    rule: reference('rules'),
    sources: z.array(reference('sources')).default([]),
  }),
});

const troubles = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/troubles' }),
  schema: troubleSchema,
});

/** By the id of an answer: `rule:wall-thickness`, `wood:black-walnut`, `own:board`. */
const asked = defineCollection({
  loader: file('content/words/asked.yaml'),
  schema: z.strictObject({ asked: typed }),
});

/** What is asked and these pages do not say. */
const beyond = defineCollection({
  loader: file('content/words/beyond.yaml'),
  schema: z.strictObject({
    title: z.string(),
    /** That it is not said here, and who says it. */
    says: z.string(),
    asked: typed,
    /** Rules that come nearest, the nearest first. */
    near: z.array(reference('rules')).min(1),
  }),
});

/** For a class: the course in blocks, what is measured on a finished box, and the tools of the sign-off. */
const blocks = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/class/blocks' }),
  schema: blockSchema,
});
const rubric = defineCollection({ loader: file('content/class/rubric.yaml'), schema: rubricSchema });
const tools = defineCollection({ loader: file('content/class/tools.yaml'), schema: toolSchema });

export const collections = {
  lessons,
  rules,
  sources,
  words,
  glossary,
  heard,
  open,
  troubles,
  asked,
  beyond,
  blocks,
  rubric,
  tools,
};
