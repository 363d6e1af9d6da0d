/** The numbers of the front page's guess, computed while the site is built. */
import type { Values } from '../box/whole/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { valuesOfGuess } from '../widgets/lesson/guess-spec.ts';
import { lidAugust } from '../widgets/subjects/movement/august/lid-august.tsx';
import { type BuiltNumbers, shownOnFrontPage } from '../widgets/subjects/movement/front-page.tsx';
import { movementModel } from '../widgets/subjects/movement/model.ts';

const of = (system: UnitSystem): Values => valuesOfGuess(lidAugust, movementModel, system);

/** Everything about the box of the guess, for a reader of each system. */
export const augustValues = { mm: of('mm'), inch: of('inch') };

const shown = (values: Values) =>
  Object.fromEntries(shownOnFrontPage.map((name) => [name, values[name]])) as BuiltNumbers['mm'];

/** What the page carries of it. */
export const augustNumbers: BuiltNumbers = { mm: shown(augustValues.mm), inch: shown(augustValues.inch) };
