/**
 * Rules or troubles found by pointing at the reader's box: the drawing, the names of its parts, and beside them those of the part
 * that is chosen. The example is drawn while the page is built, for readers of either unit; another box, or another part of it,
 * as soon as what draws it is there.
 */
import { useComputed, useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { isExample } from '../../box/subjects/example.ts';
import { verdicts, wholeModel } from '../../box/whole/index.ts';
import type { LabelPlace } from '../../figures/box/label-places.ts';
import type { Named } from '../../figures/box/NamedBox.tsx';
import type { UnitSystem } from '../../units/index.ts';
import { href } from '../kit/href.ts';
import { useStore } from '../kit/use-store.ts';
import { NamesOfParts } from './NamesOfParts.tsx';
import { RuleRows } from './RuleRows.tsx';
import { type ListedRule, linesAbout, linesOf, type PartOfRules } from './rule-lines.ts';
import { useChosen } from './use-chosen.ts';

type OwnDrawing = typeof import('./own-drawing.ts')['ownDrawing'];

/** A part within this distance of a fingertip is meant by it, px. */
const near = 20;

interface Props {
  /** What is listed, in one word. */
  of?: 'rule' | 'trouble';
  rules: readonly ListedRule[];
  parts: readonly PartOfRules[];
  /** The part to begin with, by its anchor. */
  first: string;
  /** Where the names stand beside the drawings of the example. */
  places: Readonly<Record<UnitSystem, readonly LabelPlace[]>>;
  /** The example with the first part chosen, in mm and in inches. */
  children?: ComponentChildren;
}

export default function PointAtBox({ of = 'rule', rules, parts, first, places, children }: Props) {
  const store = useStore(wholeModel);
  const { chosen, place, choose } = useChosen(parts, first);
  const late = useSignal<OwnDrawing | 'missing' | undefined>(undefined);
  const values = store.values.value;
  const lines = useComputed(() =>
    linesOf(rules, verdicts(store.values.value), store.values.value.accepted, store.values.value.kind),
  ).value;

  const last = useRef<Named>();
  const fetchDrawing = () => {
    if (typeof late.peek() === 'object') return;
    import('./own-drawing.ts').then(
      ({ ownDrawing }) => {
        late.value = ownDrawing;
      },
      () => {
        late.value = 'missing';
      },
    );
  };
  useEffect(() => {
    if (!isExample(values) || chosen.value !== first) fetchDrawing();
  }, [values, chosen.value]);
  const draws = typeof late.value === 'object' ? late.value : undefined;
  // A box that cannot be built leaves the last one that could.
  const named = useMemo(() => {
    last.current = draws?.namedOf(values) ?? last.current;
    return last.current;
  }, [draws, values]);
  const part = parts.find(({ anchor }) => anchor === chosen.value);

  /** The part under a fingertip; before the drawing is the reader's own, by the wood that is touched. */
  const take = ({ clientX, clientY, target, currentTarget }: MouseEvent) => {
    if (!(target instanceof Element) || !(currentTarget instanceof Element)) return;
    const matrix = currentTarget.querySelector<SVGSVGElement>('.bench-box')?.getScreenCTM();
    const found =
      named && draws && matrix
        ? (() => {
            const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse());
            return draws.partAt(named.picture, [x, y], near / matrix.a);
          })()
        : target.closest('[data-part]')?.getAttribute('data-part');
    const touched = found && parts.find(({ drawn }) => drawn === found);
    if (touched) choose(touched.anchor);
  };

  return (
    <div class="point-at-box" ref={place}>
      <div class="pointed" ref={store.ref as never}>
        <div class="pointed-sheet">
          {/* biome-ignore lint/a11y/useKeyWithClickEvents: the names beside it are the way for keys. */}
          <div class="touched" onClick={take} onPointerOver={fetchDrawing}>
            {named && draws ? <draws.NamedBox named={named} chosen={part?.drawn} /> : children}
          </div>
          <NamesOfParts
            of={of}
            parts={parts}
            places={named?.places ?? places[store.units.value]}
            chosen={chosen.value}
            lines={lines}
            onPart={choose}
          />
        </div>
        {late.value === 'missing' && (
          <p class="message" role="status">
            The drawing of this part could not be fetched. The lists work; reload the page when there is a
            network.
          </p>
        )}
      </div>
      <div class="rules-beside">
        {parts.map((one) => (
          <section
            key={one.anchor}
            id={one.anchor}
            class={one === part ? 'chosen' : undefined}
            aria-labelledby={`rules-${one.anchor}`}
          >
            <h2 id={`rules-${one.anchor}`} tabIndex={-1}>
              The {one.name}
            </h2>
            <RuleRows lines={linesAbout(lines, one)} />
          </section>
        ))}
        <p class="bold-or-not">
          Bold numbers are those of <a href={href('my-box/')}>my box</a>
          {of === 'rule' ? '; the others are usual.' : ': they tell which of these it is prone to.'}
        </p>
      </div>
    </div>
  );
}
