/** The lessons in the order of the course. */
import { getCollection } from 'astro:content';

const sorted = async () => (await getCollection('lessons')).sort((a, b) => a.data.order - b.data.order);

/** Every lesson with what stands in its frontmatter. */
export const lessonsInOrder = await sorted();

/** What finds a reader’s place among them. */
export const course = lessonsInOrder.map(({ id, data: { steps = [] } }) => ({
  id,
  steps: steps.map((step) => step.id),
}));
