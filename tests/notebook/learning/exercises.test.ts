/** What the exercises keep: who does them and the tries, on the device alone, also where the store refuses. */
import { beforeEach, expect, test, vi } from 'vitest';

const store = new Map<string, string>();
let refuses = false;
beforeEach(() => {
  store.clear();
  refuses = false;
  vi.stubGlobal('window', {});
  vi.stubGlobal('addEventListener', () => {});
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (refuses) throw new Error('full');
      store.set(key, text);
    },
  });
});
const fresh = async (named?: { className: string; number: number }) => {
  vi.resetModules();
  const one = await import('../../../src/notebook/learning/exercises.ts');
  one.loadExercises(named);
  return one;
};
const member = { className: '7b', number: 12 };
const one = {
  ...member,
  exercise: 'e1',
  asked: 'outside length',
  entry: '219 mm',
  said: 'Right.',
  right: true,
};

test('who it is and the tries are found again on the next visit', async () => {
  const first = await fresh();
  first.chooseMember(member);
  first.addTry(one);
  const next = await fresh();
  expect(next.member.value).toEqual(member);
  expect(next.tries.value).toEqual([one]);
});

test('who the address names comes before who is kept', async () => {
  (await fresh()).chooseMember(member);
  expect((await fresh({ className: '8a', number: 3 })).member.value).toEqual({ className: '8a', number: 3 });
});

test('what two tabs add stands in both', async () => {
  const [first, second] = [await fresh(), await fresh()];
  first.addTry(one);
  second.addTry({ ...one, entry: '220 mm' });
  expect((await fresh()).tries.value.map(({ entry }) => entry)).toEqual(['219 mm', '220 mm']);
});

test('a full store forgets nothing while the page is open, and at most 300 tries are kept', async () => {
  const page = await fresh();
  refuses = true;
  for (let at = 0; at < 305; at++) page.addTry({ ...one, entry: String(at) });
  expect(page.tries.value.length).toBe(300);
  expect(page.tries.value.at(-1)!.entry).toBe('304');
});

test('cleared is cleared, here and on the next visit', async () => {
  const page = await fresh();
  page.addTry(one);
  page.clearTries();
  expect(page.tries.value).toEqual([]);
  expect((await fresh()).tries.value).toEqual([]);
});

test('what is damaged in the store is dropped, not shown', async () => {
  store.set('rule-and-reason.exercise-member', '{"className":5}');
  store.set('rule-and-reason.exercise-tries', `[${JSON.stringify(one)},{"exercise":"e1"},null,7]`);
  const page = await fresh();
  expect(page.member.value).toBeUndefined();
  expect(page.tries.value).toEqual([one]);
  store.set('rule-and-reason.exercise-tries', 'no json');
  expect((await fresh()).tries.value).toEqual([]);
});
