/**
 * The guess of the front page: the lid of August, on a wide sheet too. The page is built with its numbers, so that nothing
 * is computed until a guess is open; then the calculation is fetched, and with it comes what the reader may move.
 */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Box } from '../../../box/subjects/inputs.ts';
import { type Model, modelOf } from '../../../box/subjects/model.ts';
import type { ResultName } from '../../../box/whole/index.ts';
import { wideSheet } from '../../../figures/movement/august/august-layouts.ts';
import { LidAugustWide } from '../../../figures/movement/august/LidAugust.tsx';
import { guesses, loadGuesses } from '../../../notebook/predictions.ts';
import type { UnitSystem } from '../../../units/index.ts';
import { GuessCard } from '../../lesson/GuessCard.tsx';
import type { NumberGuess } from '../../lesson/guess-spec.ts';
import { lidAugust } from './august/lid-august.tsx';

const id = 'lid-august';

/** Results that the drawing and its sentence use. */
export const shownOnFrontPage = [
  'outsideWidth',
  'outsideHeight',
  'lidWidth',
  'lidTongue',
  'bottomWidth',
  'lidSwelling',
  'lidPlayDamp',
] as const satisfies readonly ResultName[];

/** Those of the guess’s own box, in each reader’s units. */
export type BuiltNumbers = Readonly<
  Record<UnitSystem, Readonly<Record<(typeof shownOnFrontPage)[number], number>>>
>;

const whole: NumberGuess = { ...lidAugust, wide: { figure: LidAugustWide, frame: wideSheet.frame } };
const nothing = modelOf();

/** The same guess with its results given, not computed. */
export const withNumbers = (numbers: BuiltNumbers): NumberGuess => ({
  ...whole,
  pins: (system): Partial<Box> => ({ ...lidAugust.pins?.(system), ...numbers[system] }),
  controls: [],
});

export default function FrontPage({ numbers }: { numbers: BuiltNumbers }) {
  const model = useSignal<Model | undefined>(undefined);
  const isLost = useSignal(false);
  useEffect(() => {
    loadGuesses();
    let asked = false;
    return guesses.subscribe((kept) => {
      // The style sheet keeps room for what an open guess holds.
      document.documentElement.classList.toggle('august-open', kept[id] !== undefined);
      if (asked || kept[id] === undefined) return;
      asked = true;
      import('./model.ts').then(
        (part) => {
          model.value = part.movementModel;
        },
        () => {
          isLost.value = true;
        },
      );
    });
  }, []);
  return (
    <>
      <GuessCard id={id} spec={model.value ? whole : withNumbers(numbers)} model={model.value ?? nothing} />
      {isLost.value && (
        <p class="message" role="status">
          What else moves the lid could not be fetched: open the page again when there is a network.
        </p>
      )}
    </>
  );
}
