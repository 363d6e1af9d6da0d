/** What stands below the bench: the cut list, the drawings and all numbers, each behind a fold. */
import type { ReadonlySignal } from '@preact/signals';
import type { Design } from '../../box/design/design.ts';
import type { Store } from '../kit/use-store.ts';
import { Fold } from './Fold.tsx';
import { Late } from './Late.tsx';

interface Props {
  design: ReadonlySignal<Design>;
  store: Store;
}

export const Below = ({ design, store }: Props) => (
  <div class="below">
    <Fold summary="cut list" id="cut-list">
      {() => <Late>{({ CutList }) => <CutList design={design} />}</Late>}
    </Fold>
    <Fold summary="drawings: three views, taken apart, lid, corners" id="drawings">
      {() => <Late>{({ Drawings }) => <Drawings design={design} />}</Late>}
    </Fold>
    <Fold summary="all numbers, each with its “why?”" class="all-numbers">
      {() => <Late>{({ AllNumbers }) => <AllNumbers store={store} />}</Late>}
    </Fold>
  </div>
);
