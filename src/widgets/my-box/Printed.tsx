/** On paper no part is chosen: all inputs of the box with their values, drawn while it is printed. */
import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Values } from '../../box/whole/index.ts';
import { PartFacts } from './PartFacts.tsx';
import { nameOfPart, partsOfBench } from './parts.ts';

export function Printed({ values }: { values: ReadonlySignal<Values> }) {
  const printing = useSignal(false);
  useEffect(() => {
    const begin = () => {
      printing.value = true;
    };
    const end = () => {
      printing.value = false;
    };
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', end);
    };
  }, []);
  if (!printing.value) return null;
  return (
    <div class="printed">
      {partsOfBench.map((part) => (
        <section key={part}>
          <h2>{nameOfPart[part]}</h2>
          <PartFacts part={part} values={values.value} />
        </section>
      ))}
      <p>Cut list, set-ups and order of work are on the build sheet.</p>
    </div>
  );
}
