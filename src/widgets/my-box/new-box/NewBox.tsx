/** A new box from three questions, answered from the start: the box they make always stands beside them. */
import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { NewBoxAnswers } from '../../../box/design/new-box.ts';
import { exampleFor, isExample } from '../../../box/subjects/example.ts';
import type { Box } from '../../../box/subjects/inputs.ts';
import { shownRulers } from '../../../figures/parts/my-ruler.ts';
import { Sizes } from '../../../figures/parts/Sizes.tsx';
import { kindsOfClimate } from '../../../notebook/measure/year.ts';
import type { Store } from '../../kit/use-store.ts';
import type { CatalogItem } from '../Contents.tsx';
import { DirectNumber } from '../DirectNumber.tsx';
import { AirQuestion, airOf } from './AirQuestion.tsx';
import { BoxMade, OpenBox } from './BoxMade.tsx';
import { kinds, ownThing, thingsOf } from './choices.ts';
import { Tiles } from './Tiles.tsx';
import { useMadeBox } from './use-made-box.ts';
import { WoodQuestion } from './WoodQuestion.tsx';

interface Props {
  store: Store;
  catalog: readonly CatalogItem[];
  onDone: (box: Box) => void;
}

const mine = 'my own';
const sides = ['length', 'width', 'height'] as const;

export function NewBox({ store, catalog, onDone }: Props) {
  const system = store.units.value;
  const things = useMemo(() => thingsOf(catalog, system), [catalog, system]);
  const label = useSignal(things[0]?.label ?? mine);
  const own = useSignal(ownThing(system));
  const kind = useSignal<Box['kind']>('sliding');
  const species = useSignal<Box['species']>('black-cherry');
  const climate = useSignal(kindsOfClimate[0]!.id);
  const today = useSignal<number | undefined>(undefined);

  const item = things.find((one) => one.label === label.value)?.item ?? own.value;
  const air = airOf(climate.value);
  const answers: NewBoxAnswers = {
    name: label.value === mine ? 'My box' : `Box for ${label.value}`,
    items: [item],
    kind: kind.value,
    joint: 'finger',
    species: species.value,
    air: { ...air, humidityToday: today.value ?? air.humidityToday },
  };
  const { box, refused, isNow } = useMadeBox(answers, shownRulers.value[system]);
  /** One drawing of each kind, of the example. */
  const drawings = useMemo(
    () => kinds.map((one) => <OpenBox key={one.kind} box={{ ...exampleFor(system), kind: one.kind }} />),
    [system],
  );
  return (
    <div class="new-box">
      <div class="questions">
        <p>Three questions. Every answer can be changed later.</p>
        <Tiles
          number={1}
          question="What goes in it?"
          tiles={[
            ...things.map(({ label: value, item: { length, width, height } }) => ({
              value,
              label: value,
              note: (
                <>
                  each <Sizes of={[length, width, height]} asTyped />
                </>
              ),
            })),
            { value: mine, label: 'my own: length, width, height' },
          ]}
          chosen={label.value}
          choose={(value) => {
            label.value = value;
          }}
        >
          {label.value === mine && (
            <div class="own-thing">
              {sides.map((side) => (
                <DirectNumber
                  key={side}
                  label={side}
                  kind="length"
                  value={own.value[side]}
                  low={5}
                  high={600}
                  system={system}
                  set={(value) => {
                    own.value = { ...own.value, [side]: value };
                    return undefined;
                  }}
                />
              ))}
            </div>
          )}
        </Tiles>
        <Tiles
          number={2}
          question="Which lid?"
          tiles={kinds.map(({ kind: value, label: words }, at) => ({
            value,
            label: words,
            drawing: drawings[at],
          }))}
          chosen={kind.value}
          choose={(value) => {
            kind.value = value;
          }}
        />
        <WoodQuestion
          species={species.value}
          choose={(value) => {
            species.value = value;
          }}
        />
        <AirQuestion
          climate={climate.value}
          air={answers.air}
          system={system}
          choose={(value) => {
            climate.value = value;
            today.value = undefined;
          }}
          setToday={(value) => {
            today.value = value;
          }}
        />
      </div>
      <div class="box-made" aria-live="polite">
        {refused && (
          <p class="message" role="alert">
            {refused}
          </p>
        )}
        {box && <BoxMade box={box} />}
        <p class="buttons">
          <button type="button" disabled={!box || !isNow} onClick={() => box && onDone(box)}>
            put it on the bench
          </button>
        </p>
        {!isExample(store.values.value) && (
          <p class="quiet-words">{store.values.value.name} stays under “my boxes”.</p>
        )}
      </div>
    </div>
  );
}
