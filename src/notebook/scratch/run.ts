/**
 * The page's side of the worker: it is fetched with the first use, one round of cells is on its way at a time, and a cell
 * that does not end is ended with the worker. Then a new worker goes on with the others, and the cell is not tried again
 * until it, a cell above it, or the box has changed.
 */
import type { Box } from '../../box/subjects/inputs.ts';
import type { InputWords } from './call.ts';
import type { Cell } from './cells.ts';
import type { Listed } from './listed.ts';
import type { CellResult } from './sheet.ts';
import type { Asked, Told } from './worker.ts';

/** How long a cell may be silent before the worker is ended, ms: a little more than it gives itself. */
const patience = 1300;
const ended: CellResult = {
  type: 'trouble',
  message: 'Stopped: this took longer than a second. The other cells go on.',
};

export interface Round {
  readonly box: Box;
  readonly cells: readonly Cell[];
  readonly words: InputWords;
  /** Whatever the page knows the cells by, in their order. */
  readonly ids: readonly number[];
}
export interface Follower {
  readonly names: (names: readonly Listed[]) => void;
  readonly result: (id: number, result: CellResult) => void;
  /** The worker could not be fetched. */
  readonly missing: () => void;
}

const makeWorker = (): Worker => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });

/** @param make makes a worker; another one in tests */
export function runner(follow: Follower, make: () => Worker = makeWorker) {
  let worker: Worker | undefined;
  let number = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** What did not end, by everything it depends on. */
  const endless = new Set<string>();
  let current: Round | undefined;
  let wanted: Round | undefined;

  const keyOf = ({ box, cells }: Round, at: number) => JSON.stringify([box, cells.slice(0, at + 1)]);

  const end = () => {
    clearTimeout(timer);
    worker?.terminate();
    worker = undefined;
  };

  const hear = ({ data }: MessageEvent<Told>) => {
    if (data.round !== number || !current) return;
    if ('names' in data) follow.names(data.names);
    else if ('begun' in data) {
      const at = data.begun;
      const round = current;
      clearTimeout(timer);
      timer = setTimeout(() => {
        end();
        if (endless.size > 100) endless.clear();
        endless.add(keyOf(round, at));
        send(wanted ?? round);
      }, patience);
    } else {
      clearTimeout(timer);
      follow.result(current.ids[data.done]!, data.result);
      if (data.done === lastAsked) finish();
    }
  };
  let lastAsked = -1;
  const finish = () => {
    current = undefined;
    if (wanted) send(wanted);
  };

  const start = () => {
    const made = make();
    made.addEventListener('message', hear);
    made.addEventListener('error', (event) => {
      event.preventDefault();
      end();
      current = undefined;
      wanted = undefined;
      follow.missing();
    });
    return made;
  };

  const send = (round: Round) => {
    wanted = undefined;
    current = round;
    const skip = round.cells.flatMap((_, at) => (endless.has(keyOf(round, at)) ? at : []));
    for (const at of skip) follow.result(round.ids[at]!, ended);
    lastAsked = round.cells.findLastIndex((_, at) => !skip.includes(at));
    worker ??= start();
    const { box, cells, words } = round;
    worker.postMessage({ round: ++number, box, cells, words, skip } satisfies Asked);
    if (lastAsked < 0) finish();
  };

  return {
    /** Works out all cells; a newer round waits for the one on its way and takes the place of one that waits. */
    run: (round: Round) => {
      if (current) wanted = round;
      else send(round);
    },
    end,
  };
}
