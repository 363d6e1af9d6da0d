/** What the rules say of a design: every verdict with what would change it, and how many are kept. */
import { verdicts } from '../../box/checks/index.ts';
import type { Design } from '../../box/design.ts';
import type { Store } from '../../notebook/use-store.ts';
import { VerdictLine } from '../VerdictLine.tsx';
import { VerdictActions } from './VerdictActions.tsx';

/** The worst first, so that a reader on a phone sees it without scrolling. */
const order = { breaks: 0, unusual: 1, usual: 2 };

export function Verdicts({ design, store }: { design: Design; store: Store }) {
  const judged = verdicts(design.values).sort((a, b) => order[a.state] - order[b.state]);
  return (
    <ul class="verdicts">
      {judged.map((verdict) => (
        <VerdictLine key={verdict.check.rule + verdict.check.label} verdict={verdict}>
          {verdict.state !== 'usual' && <VerdictActions verdict={verdict} store={store} />}
        </VerdictLine>
      ))}
    </ul>
  );
}

/** How many rules are kept, in one line. */
export function VerdictCount({ design }: { design: Design }) {
  const states = verdicts(design.values).map(({ state }) => state);
  const count = (state: keyof typeof order) => states.filter((one) => one === state).length;
  return (
    <p class="says">
      {count('breaks')} rules broken, {count('unusual')} outside the usual range, {count('usual')} inside it.
    </p>
  );
}
