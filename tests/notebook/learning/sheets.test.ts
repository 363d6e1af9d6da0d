/** What a teacher chose last for the sheets: found again on this device, and nothing else is taken for it. */
import { beforeEach, expect, test, vi } from 'vitest';

const store = new Map<string, string>();
let refuses = false;
let follow: ((event: { key: string; newValue: string }) => void) | undefined;
beforeEach(() => {
  store.clear();
  refuses = false;
  vi.stubGlobal('window', {});
  vi.stubGlobal('addEventListener', (_: string, told: typeof follow) => {
    follow = told;
  });
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (refuses) throw new Error('full');
      store.set(key, text);
    },
  });
});
const fresh = async () => {
  vi.resetModules();
  const one = await import('../../../src/notebook/learning/sheets.ts');
  one.loadSheets();
  return one;
};
const choices = {
  className: '7b',
  learners: 30,
  system: 'inch',
  paper: 'Letter',
  print: 'both',
  exercises: ['e1', 'e5'],
} as const;

test('the choices are found again on the next visit', async () => {
  (await fresh()).keepSheets(choices);
  expect((await fresh()).sheetChoices.value).toEqual(choices);
});

test('a refused store keeps the page’s own', async () => {
  const page = await fresh();
  refuses = true;
  page.keepSheets(choices);
  expect(page.sheetChoices.value).toEqual(choices);
  expect((await fresh()).sheetChoices.value).toBeUndefined();
});

test('what another tab chose is followed', async () => {
  const page = await fresh();
  follow!({ key: 'rule-and-reason.sheets', newValue: JSON.stringify(choices) });
  expect(page.sheetChoices.value).toEqual(choices);
});

test.each([
  'not json',
  '[]',
  'null',
  JSON.stringify({ ...choices, learners: 61 }),
  JSON.stringify({ ...choices, learners: '30' }),
  JSON.stringify({ ...choices, system: 'feet' }),
  JSON.stringify({ ...choices, paper: 'A3' }),
  JSON.stringify({ ...choices, print: 'all' }),
  JSON.stringify({ ...choices, exercises: 'e1' }),
  JSON.stringify({ ...choices, className: 'x'.repeat(61) }),
])('%s is no choice', async (text) => {
  store.set('rule-and-reason.sheets', text);
  expect((await fresh()).sheetChoices.value).toBeUndefined();
});
