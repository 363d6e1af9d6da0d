/**
 * The new numbers of a lesson as a task for paper: its sets of numbers, and the answers, from the model that the page of
 * the lesson has. What the author wrote in the tag is read from the lesson's text.
 */
import { parse } from 'yaml';
import { exampleBox } from '../../box/subjects/example.ts';
import { compute } from '../../box/subjects/model.ts';
import type { Props as Exercise } from '../../widgets/lesson/Exercise.tsx';
import type { Lesson } from '../../widgets/lesson/lesson.tsx';

const tag = /<NewNumbers\s([\s\S]*?)\/>/;
/** `name="text"` or `name={…}`, with braces in it one deep. */
const attribute = /(\w+)=(?:"([^"]*)"|\{((?:[^{}]|\{[^{}]*\})*)\})/g;

/** The question of a lesson's text, or undefined where it has none. */
export function taskIn(body = ''): Exercise | undefined {
  const written = tag.exec(body)?.[1];
  if (written === undefined) return undefined;
  return Object.fromEntries(
    [...written.matchAll(attribute)].map(([, name, text, code]) => [
      name,
      // A list of literals reads the same in YAML.
      text ?? (parse(code!) as unknown),
    ]),
  ) as unknown as Exercise;
}

/** Numbers of each set with their answer, in the units of the model; and what usual slips would give. */
export const answersOf = ({ sets, tell, result, slips = [] }: Exercise, { model }: Lesson) =>
  sets.map((set) => {
    const values = compute(model.results, { ...exampleBox, ...set });
    return {
      told: tell.map((name) => ({ name, value: values[name] as number })),
      answer: values[result] as number,
      slips: slips.map((slip) => ({
        value: (values[slip.result] as number) * (slip.times ?? 1),
        says: slip.says,
      })),
    };
  });
