/** The inputs of a part with their values, to read: on paper, and without JavaScript. */
import { printOf } from '../../box/core/field.ts';
import { fields } from '../../box/subjects/inputs.ts';
import type { Values } from '../../box/whole/index.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { inputsIn, type PartOfBench } from './parts.ts';

export const PartFacts = ({ part, values }: { part: PartOfBench; values: Values }) => (
  <dl class="facts">
    {[...inputsIn(part, 'basic', values), ...inputsIn(part, 'more', values)].map((name) => {
      const field = fields[name];
      return (
        <>
          <dt>{field.label}</dt>
          <dd>
            {field.type === 'number' ? (
              <Quantity value={values[name] as number} kind={field.kind} {...printOf(field)} />
            ) : (
              (field.options as Record<string, string>)[values[name]]
            )}
          </dd>
        </>
      );
    })}
  </dl>
);
