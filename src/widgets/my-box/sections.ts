/** Which inputs stand in which section of the page: those of the subjects, as they declare them. */
import { airInputs } from '../../box/subjects/air/inputs.ts';
import { boardInputs } from '../../box/subjects/board/inputs.ts';
import { bottomInputs } from '../../box/subjects/bottom/inputs.ts';
import { type Box, type ChoiceName, hasInput, type NumberName } from '../../box/subjects/inputs.ts';
import { jointsInputs } from '../../box/subjects/joints/inputs.ts';
import { lidInputs } from '../../box/subjects/lid/inputs.ts';
import { movementInputs } from '../../box/subjects/movement/inputs.ts';
import { contentsInputs, sizeInputs } from '../../box/subjects/size/inputs.ts';
import { squareInputs } from '../../box/subjects/square/inputs.ts';
import { wallsInputs } from '../../box/subjects/walls/inputs.ts';

type Input = NumberName | ChoiceName;

export interface Section {
  readonly title: string;
  readonly inputs: readonly Input[];
}

const names = <Table extends object>(table: Table) => Object.keys(table) as (keyof Table & Input)[];
/** The list of things has a table of its own, and the push stands beside what else a hand does. */
const without = (inputs: readonly string[], ...some: string[]) =>
  inputs.filter((name) => !some.includes(name)) as Input[];

export const sections = {
  contents: { title: 'What goes in it', inputs: without(names(contentsInputs), 'items') },
  size: {
    title: 'Size and kind',
    inputs: [...names(sizeInputs), ...without(names(wallsInputs), 'push')],
  },
  corners: { title: 'Corners', inputs: names(jointsInputs) },
  bottom: { title: 'Bottom', inputs: names(bottomInputs) },
  lid: { title: 'Lid', inputs: names(lidInputs) },
  wood: { title: 'Wood and air', inputs: [...names(movementInputs), ...names(airInputs)] },
  board: { title: 'The board', inputs: names(boardInputs) },
  errors: { title: 'Your own accuracy', inputs: [...names(squareInputs), 'push'] },
} as const satisfies Record<string, Section>;

/** The inputs of a section that this box has. */
export const inputsFor = (section: Section, box: Box): readonly Input[] =>
  section.inputs.filter((input) => hasInput(input, box));
