/**
 * The islands of one lesson: its labs, and the guesses, exercises, questions and verdicts around them, all working on
 * the model of its subject. One file a lesson, so that it fetches what it needs and nothing else.
 */
import type { Box } from '../../box/subjects/inputs.ts';
import type { Model } from '../../box/subjects/model.ts';
import { Exercise, type Props as ExerciseProps } from './Exercise.tsx';
import { GuessCard } from './GuessCard.tsx';
import type { GuessSpec } from './guess-spec.ts';
import { Lab } from './Lab.tsx';
import type { LabSpec, SharingLabSpec } from './lab-spec.ts';
import { PutInMyBox, type Props as PutInMyBoxProps } from './PutInMyBox.tsx';

export interface Lesson {
  readonly labs: Readonly<Record<string, LabSpec | SharingLabSpec>>;
  /** Guesses by their id, which is unique in the notebook. */
  readonly guesses?: Readonly<Record<string, GuessSpec>>;
  readonly model: Model;
}

/** What an author's tag asks of a lesson. */
export type IslandProps =
  | { as: 'lab'; name: string; pins?: Partial<Box> | undefined }
  | { as: 'guess card'; id: string }
  | ({ as: 'exercise' } & ExerciseProps)
  | ({ as: 'my box' } & PutInMyBoxProps);

/** The component that Astro wakes for every tag of a lesson. */
export const islandOf =
  ({ labs, guesses = {}, model }: Lesson) =>
  (props: IslandProps) => {
    switch (props.as) {
      case 'lab': {
        const spec = labs[props.name]!;
        if (!('component' in spec)) return <Lab spec={spec} model={model} pins={props.pins} />;
        const { component: Sharing } = spec;
        return <Sharing />;
      }
      case 'guess card':
        return <GuessCard id={props.id} spec={guesses[props.id]!} model={model} />;
      case 'exercise':
        return <Exercise model={model} {...props} />;
      case 'my box':
        return <PutInMyBox model={model} {...props} />;
    }
  };
