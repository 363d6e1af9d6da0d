/** The page's side of the worker, with a worker that stays silent at a cell. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { exampleBox } from '../../../src/box/subjects/example.ts';
import { runner } from '../../../src/notebook/scratch/run.ts';
import type { CellResult } from '../../../src/notebook/scratch/sheet.ts';
import type { Asked } from '../../../src/notebook/scratch/worker.ts';

/** Answers at once, and hangs at a cell that says so. */
class Pretended extends EventTarget {
  static made: Pretended[] = [];
  terminated = false;
  constructor() {
    super();
    Pretended.made.push(this);
  }
  postMessage({ round, cells, skip }: Asked) {
    queueMicrotask(() => {
      for (const [at, { text }] of cells.entries()) {
        if (skip.includes(at)) continue;
        this.tell({ round, begun: at });
        if (text === 'hang') return;
        this.tell({ round, done: at, result: { type: 'value', shown: { mm: text, inch: text } } });
      }
    });
  }
  tell(data: unknown) {
    if (!this.terminated) this.dispatchEvent(new MessageEvent('message', { data }));
  }
  terminate() {
    this.terminated = true;
  }
}

const round = (...texts: string[]) => ({
  box: exampleBox,
  cells: texts.map((text) => ({ type: 'sum' as const, text })),
  ids: texts.map((_, at) => at + 10),
  words: {},
});

beforeEach(() => {
  vi.useFakeTimers();
  Pretended.made = [];
});
afterEach(() => {
  vi.useRealTimers();
});

function start() {
  const results = new Map<number, CellResult>();
  const missing = vi.fn();
  const works = runner(
    { names: () => {}, result: (id, result) => results.set(id, result), missing },
    () => new Pretended() as unknown as Worker,
  );
  const says = (id: number) => {
    const result = results.get(id);
    return result?.type === 'value'
      ? result.shown.mm
      : result?.type === 'trouble'
        ? result.message
        : undefined;
  };
  return { works, says, missing };
}

test('a cell that does not end is ended with its worker, and a new one goes on with the others', async () => {
  const { works, says } = start();
  works.run(round('a', 'hang', 'c'));
  await vi.advanceTimersByTimeAsync(10);
  expect([says(10), says(11), says(12)]).toEqual(['a', undefined, undefined]);
  await vi.advanceTimersByTimeAsync(2000);
  expect([says(10), says(11), says(12)]).toEqual(['a', expect.stringContaining('Stopped'), 'c']);
  expect(Pretended.made.map(({ terminated }) => terminated)).toEqual([true, false]);
});

test('it is not tried again until it or a cell above it has changed', async () => {
  const { works, says } = start();
  works.run(round('a', 'hang', 'c'));
  await vi.advanceTimersByTimeAsync(2000);
  works.run(round('a', 'hang', 'd'));
  await vi.advanceTimersByTimeAsync(10);
  expect(says(12)).toBe('d');
  expect(Pretended.made).toHaveLength(2);
  works.run(round('a', 'b', 'd'));
  await vi.advanceTimersByTimeAsync(10);
  expect(says(11)).toBe('b');
  works.run(round('x', 'hang', 'd'));
  await vi.advanceTimersByTimeAsync(2000);
  expect(Pretended.made).toHaveLength(3);
});

test('what is asked while a cell hangs takes the place of what waits', async () => {
  const { works, says } = start();
  works.run(round('hang'));
  await vi.advanceTimersByTimeAsync(10);
  works.run(round('one'));
  works.run(round('two'));
  await vi.advanceTimersByTimeAsync(2000);
  expect(says(10)).toBe('two');
});

test('a worker that cannot be fetched is told, and the next round tries again', async () => {
  const { works, says, missing } = start();
  works.run(round('hang'));
  Pretended.made[0]!.dispatchEvent(new Event('error'));
  expect(missing).toHaveBeenCalledOnce();
  works.run(round('b'));
  await vi.advanceTimersByTimeAsync(10);
  expect(says(10)).toBe('b');
});
