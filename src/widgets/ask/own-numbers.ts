/** Every other number that follows from the box, and every choice in it. */
import { printOf } from '../../box/core/field.ts';
import { type Result, sayOf } from '../../box/core/result.ts';
import { type Box, fields, hasInput } from '../../box/subjects/inputs.ts';
import { type ResultName, type Values, wholeModel } from '../../box/whole/index.ts';
import type { Entry } from './entry.ts';
import { checksOf } from './judged.ts';
import { checkOf, type Own } from './own.ts';

const path = 'my-box/';

/** Said by the cut list, the gaps or the set-ups, which round them as they are cut. */
const saidElsewhere: ReadonlySet<string> = new Set<ResultName | keyof Box>([
  'bottomWidth',
  'bottomLength',
  'bottomPlayToday',
  'lidWidth',
  'lidLength',
  'lidPlayToday',
  'grooveWidth',
  'emptyMass',
  'name',
  'wall',
  'bottomThickness',
  'lidThickness',
  'humidityToday',
]);

export function ownNumbers({ box, values }: Own): readonly Entry[] {
  const results = (Object.entries(wholeModel.results) as [ResultName, Result<Values>][])
    .filter(([name, { when }]) => !saidElsewhere.has(name) && (when?.(values) ?? true))
    .map(([name, row]): Entry => {
      const { label, rule, ...shown } = sayOf(row);
      return {
        id: `own:${name}`,
        kind: 'own',
        title: label,
        path,
        says: '',
        rule,
        check: checkOf(name, values)?.id,
        number: () => (Number.isNaN(values[name]) ? undefined : [{ value: values[name], ...shown }]),
      };
    });
  const choices = (Object.keys(fields) as (keyof Box)[])
    .filter((name) => !saidElsewhere.has(name) && hasInput(name, box))
    .flatMap((name): Entry[] => {
      const field = fields[name];
      const check = checkOf(name, values);
      const behind =
        check ??
        wholeModel.checks.find(
          ({ id, applies }) => checksOf(name).includes(id) && (applies?.(values) ?? true),
        );
      const entry = {
        id: `own:chosen.${name}`,
        kind: 'own',
        title: field.label,
        path,
        says: '',
        rule: behind?.rule,
        check: check?.id,
      } as const;
      if (field.type === 'number') {
        const value = box[name] as number;
        return [{ ...entry, number: () => [{ value, kind: field.kind, ...printOf(field) }] }];
      }
      if (field.type !== 'choice') return [];
      const chosen = (field.options as Readonly<Record<string, string>>)[box[name] as string];
      return chosen ? [{ ...entry, number: () => [chosen] }] : [];
    });
  return [...results, ...choices];
}
