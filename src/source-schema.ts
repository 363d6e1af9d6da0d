/** What a file in `content/sources` holds: one cited work. Used by the content collection and by the tests. */
import { z } from 'astro/zod';

/** How a work, or one table of it, was read. Printed beside the citation. */
const howRead = z.enum([
  'seen',
  'seen in the abstract',
  'seen in an extract',
  'seen second-hand',
  'from memory',
]);

/** One cited work. `keys` are the names by which rows of `content/data` point to a table or page of it. */
export const sourceSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  title: z.string().min(1),
  /** For running text: "Wood Handbook (2010)". */
  short: z.string().min(1),
  producer: z.string().min(1),
  citation: z.string().min(1),
  /** Of publication; `null` where the work carries none or it is not known. */
  year: z.int().min(1500).max(2100).nullable(),
  read: howRead,
  note: z.string().min(1).optional(),
  keys: z
    .array(z.strictObject({ key: z.string().min(1), where: z.string().min(1), read: howRead }))
    .min(1)
    .optional(),
});

export type Source = z.infer<typeof sourceSchema>;
