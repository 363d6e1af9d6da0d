/** The chosen part: its few basic controls, the rest of them behind a fold, and what the rules say about it. */
import type { ReadonlySignal } from '@preact/signals';
import { useComputed } from '@preact/signals';
import type { ComponentChildren, FunctionComponent, RefObject } from 'preact';
import type { Design } from '../../box/design/design.ts';
import { type Values, verdicts } from '../../box/whole/index.ts';
import { worstFirst } from '../kit/told.tsx';
import type { Store } from '../kit/use-store.ts';
import { Accuracy } from './Accuracy.tsx';
import { ByRatio } from './ByRatio.tsx';
import type { CatalogItem } from './Contents.tsx';
import { ContentsInShort } from './ContentsInShort.tsx';
import { Controls } from './Controls.tsx';
import { Fold } from './Fold.tsx';
import { GivenSizes, givenIn } from './GivenSizes.tsx';
import { Late } from './Late.tsx';
import { MoistureMeter } from './MoistureMeter.tsx';
import { PartSize } from './PartSize.tsx';
import { partOfCheck } from './part-of-check.ts';
import { aboutPart, inputsIn, nameOfPart, type PartOfBench } from './parts.ts';
import { RuleLines } from './RuleLines.tsx';
import type { KnownBands } from './use-bands.ts';

interface Props {
  part: PartOfBench;
  store: Store;
  /** The box, as far as the drawings follow it. */
  design: ReadonlySignal<Design>;
  shown: ReadonlySignal<Values>;
  catalog: readonly CatalogItem[];
  heading: RefObject<HTMLHeadingElement>;
  /** Bands that need no worker. */
  known: KnownBands;
}

const title = (part: PartOfBench) => {
  const name = part === 'inside' ? 'inside: what goes in' : nameOfPart[part];
  return name[0]!.toUpperCase() + name.slice(1);
};

export function PartPanel({ part, store, design, shown, catalog, heading, known }: Props) {
  return (
    <section class="part" key={part} aria-label={title(part)}>
      <h2 tabIndex={-1} ref={heading}>
        {title(part)}
      </h2>
      <p class="part-size">
        <SizeNow part={part} shown={shown} />
      </p>
      {part === 'inside' && (
        <ContentsInShort store={store}>
          {() => <Late>{({ Contents }) => <Contents store={store} shown={shown} catalog={catalog} />}</Late>}
        </ContentsInShort>
      )}
      <Controls part={part} which="basic" store={store} known={known} />
      {part === 'air' && <MoistureMeter store={store} />}
      <More part={part} store={store}>
        {part === 'walls' && <ByRatio store={store} />}
      </More>
      {part === 'accuracy' && <Accuracy design={design} units={store.units} />}
      {part === 'board' && (
        <Fold class="on-boards" summary="how the parts lie on the boards">
          {() => <Late>{({ Board }) => <OnBoards Board={Board} design={design} />}</Late>}
        </Fold>
      )}
      <Rules part={part} store={store} />
    </section>
  );
}

const SizeNow = ({ part, shown }: Pick<Props, 'part' | 'shown'>) => (
  <PartSize part={part} values={shown.value} />
);

interface OnBoardsProps extends Pick<Props, 'design'> {
  Board: FunctionComponent<{ design: Design }>;
}
const OnBoards = ({ Board, design }: OnBoardsProps) => <Board design={design.value} />;

function More({ part, store, children }: { part: PartOfBench; store: Store; children: ComponentChildren }) {
  const count = useComputed(
    () =>
      inputsIn(part, 'more', store.values.value).length + givenIn(part, store.values.value.sizeFrom).length,
  ).value;
  if (count === 0) return null;
  return (
    <Fold class="more-inputs" summary={`more about ${aboutPart[part]} (${count})`}>
      {() => (
        <>
          <Controls part={part} which="more" store={store} />
          <GivenSizes part={part} store={store} />
          {children}
        </>
      )}
    </Fold>
  );
}

/** The rules that speak about this box. */
const rulesAbout = (part: PartOfBench, values: Values) =>
  verdicts(values).filter(({ check }) => partOfCheck(check.id) === part);

function Rules({ part, store }: { part: PartOfBench; store: Store }) {
  const count = useComputed(() => rulesAbout(part, store.values.value).length).value;
  return (
    <Fold class="part-rules" summary={`${count} rule${count === 1 ? '' : 's'} about ${aboutPart[part]}`}>
      {() => <AllRules part={part} store={store} />}
    </Fold>
  );
}

const AllRules = ({ part, store }: { part: PartOfBench; store: Store }) => (
  <RuleLines verdicts={rulesAbout(part, store.values.value).sort(worstFirst)} store={store} />
);
