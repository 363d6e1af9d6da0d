/** What a block of the course, a row of the rubric and a tool of the sign-off must say. Common practice, all of it. */
import { reference } from 'astro:content';
import { z } from 'astro/zod';
import { cautionName } from './caution-schema.ts';

/** One block of 90 minutes. Its lessons, rules, words and figures stand in it by name alone: what they say comes from them. */
export const blockSchema = z.strictObject({
  /** Place in the course, from 1. */
  order: z.number().int().positive(),
  title: z.string(),
  /** What the block answers, as a learner would ask it. */
  question: z.string(),
  lessons: z.array(reference('lessons')).min(1),
  rules: z.array(reference('rules')).min(3).max(8),
  words: z.array(reference('glossary')).min(8).max(10),
  /** A guess of a lesson, by its name there, for the wall. */
  guess: z.strictObject({ lesson: reference('lessons'), of: z.string() }),
  /** The rule whose small figure goes on the board. */
  figure: reference('rules'),
  /** The rule whose first worked example is done before the class. */
  worked: reference('rules'),
  /** The lesson whose new numbers are the exercise. */
  exercise: reference('lessons'),
  /** What lies ready. */
  material: z.array(z.string()).min(2).max(7),
  /** How the guess is shown with real things, before and after. */
  demonstrate: z.string(),
  /** The task at the bench, in steps. */
  bench: z.array(z.string()).min(2).max(5),
  /** What each learner shows or writes before leaving. */
  exit: z.string(),
  /** What may go wrong: with the class, and with the box. */
  mind: z.string(),
  troubles: z.array(reference('troubles')).min(1).max(2),
  /** Where the work can hurt: names of `src/box/work/cautions.ts`. */
  cautions: z.array(cautionName).max(2).default([]),
});

/** One thing that is measured on a finished box, best level first. */
export const rubricSchema = z.strictObject({
  order: z.number().int().positive(),
  item: z.string(),
  /** How it is measured. */
  how: z.string(),
  levels: z.tuple([z.string(), z.string(), z.string(), z.string()]),
});

/** A tool that nobody uses before they have been seen to use it well. */
export const toolSchema = z.strictObject({
  order: z.number().int().positive(),
  tool: z.string(),
  /** Who uses it, as a rule. */
  who: z.enum(['learner', 'instructor']),
});
