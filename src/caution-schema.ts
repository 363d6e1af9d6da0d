/** Where the work can hurt, as a rule, a trouble or a block of the course says it. */
import { z } from 'astro/zod';
import { cautionNames } from './box/work/cautions.ts';

/** A caution of the one table. */
export const cautionName = z.enum(cautionNames);

/** Cautions of the table by name, or a case of its own. */
export const cautionList = z
  .array(z.union([cautionName, z.strictObject({ hazard: z.string(), safeguard: z.string() })]))
  .default([]);
