/** Two designs side by side: the current one and a kept one. */

import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Field, Item } from '../../box/core/field.ts';
import { printOf } from '../../box/core/field.ts';
import { type Design, designBox } from '../../box/design/design.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { fields } from '../../box/subjects/inputs.ts';
import { verdicts } from '../../box/whole/index.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { Sizes } from '../../figures/parts/Sizes.tsx';
import { countOf } from '../kit/told.tsx';

const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

function Value({ field, value }: { field: Field; value: unknown }) {
  switch (field.type) {
    case 'number':
      return <Quantity value={value as number} kind={field.kind} {...printOf(field)} />;
    case 'choice':
      return <>{field.options[value as string]}</>;
    case 'items':
      return (
        <>
          {(value as readonly Item[]).map(({ name, count }) => `${count} × ${name}`).join(', ') || 'nothing'}
        </>
      );
    case 'reasons':
      return <>{Object.keys(value as object).length} accepted</>;
    case 'text':
      return <>{value as string}</>;
  }
}

const outside = ({ values: v }: Design) => [v.outsideLength, v.outsideWidth, v.outsideHeight];
export function Compare({ mine, other, onClose }: { mine: Design; other: Box; onClose: () => void }) {
  const both = [mine, designBox(other)] as const;
  const differing = (Object.keys(fields) as (keyof Box)[]).filter(
    (name) => name !== 'name' && !same(mine.box[name], other[name]),
  );
  /** The reader is led to the table, and back to where they asked for it. */
  const heading = useRef<HTMLHeadingElement>(null);
  const asked = useRef<Element | null>(null);
  useLayoutEffect(() => {
    asked.current = document.activeElement;
    heading.current?.focus();
  }, [other]);
  const close = () => {
    onClose();
    if (asked.current instanceof HTMLElement) asked.current.focus();
  };
  return (
    <section class="compare" aria-label="Two designs side by side">
      <h2 tabIndex={-1} ref={heading}>
        Side by side
      </h2>
      <section class="scroll" aria-label="Table of both designs" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <td />
              <th scope="col">{mine.box.name} (mine, now)</th>
              <th scope="col">{other.name} (kept)</th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">outside</th>
              {both.map((design, index) => (
                <td key={index}>
                  <Sizes of={outside(design)} />
                </td>
              ))}
            </tr>
            <tr>
              <th scope="row">inside</th>
              {both.map(({ inside }, index) => (
                <td key={index}>
                  {inside ? <Sizes of={[inside.length, inside.width, inside.height]} /> : 'none left'}
                </td>
              ))}
            </tr>
            <tr>
              <th scope="row">inside volume</th>
              {both.map(({ insideVolume }, index) => (
                <td key={index}>
                  <Quantity value={insideVolume ?? Number.NaN} kind="volume" digits={0} />
                </td>
              ))}
            </tr>
            <tr>
              <th scope="row">mass</th>
              {both.map(({ mass }, index) => (
                <td key={index}>
                  <Quantity value={mass ?? Number.NaN} kind="mass" digits={0} />
                </td>
              ))}
            </tr>
            <tr>
              <th scope="row">rules</th>
              {both.map((design, index) => (
                <td key={index}>{countOf(verdicts(design.values))}</td>
              ))}
            </tr>
            <tr>
              <th scope="row">can be built</th>
              {both.map(({ refusals }, index) => (
                <td key={index}>{refusals[0] ? `no: ${refusals[0].what}` : 'yes'}</td>
              ))}
            </tr>
            {differing.map((name) => (
              <tr key={name}>
                <th scope="row">{fields[name].label}</th>
                {[mine.box, other].map((box, index) => (
                  <td key={index}>
                    <Value field={fields[name]} value={box[name]} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {differing.length === 0 && <p>Every input is the same.</p>}
      <p>
        <button type="button" class="quiet" onClick={close}>
          close the comparison
        </button>
      </p>
    </section>
  );
}
