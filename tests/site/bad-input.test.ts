/**
 * Bad input breaks nothing: a damaged store, links, files and whatever is typed. No error, no number that is none, nothing
 * lost, and a message.
 */
import { expect, type Page, test } from '@playwright/test';
import { nasties, slips, wakeAll } from './nasties.ts';
import { open } from './site.ts';

test.use({ locale: 'en-GB', viewport: { width: 1000, height: 900 }, reducedMotion: 'reduce' });

const keys = [
  ...[
    'box',
    'designs',
    'designs.damaged',
    'done',
    'progress',
    'guesses',
    'recall',
    'notes',
    'exercise-member',
  ],
  ...[
    'exercise-tries',
    'sheets',
    'set-aside',
    'scratch',
    'scratch.before',
    'scratch.damaged',
    'year',
    'units',
  ],
  ...['ruler', 'both-units'],
];
const deep = `${'['.repeat(20_000)}${']'.repeat(20_000)}`;
const all = (text: string) => Object.fromEntries(keys.map((key) => [key, text]));
/** The right shapes with wrong things in them. */
const poisoned: Record<string, unknown> = {
  box: {
    version: 1,
    box: { name: '__proto__', wall: 12, kerf: '1e999', __proto__: null, accepted: { constructor: 'x' } },
  },
  designs: { version: 1, designs: [{ name: 'constructor', box: { wall: 9 } }, null, { name: 7, box: [] }] },
  done: { constructor: { steps: ['toString', 'mill'], of: '' }, x: { steps: 'mill', of: 1 } },
  progress: {
    lessons: { 'joint-spacing': { at: 'nowhere', steps: { constructor: 'done', edge: 'half' } } },
    last: '__proto__',
  },
  guesses: { 'lid-august': '1e999', constructor: 'NaN', 'panel-gap': '-Infinity', wall: { deep: [] } },
  recall: {
    version: 1,
    answers: {
      'proportion/1': [
        [1e300, 'right'],
        [-2_999_999, 'right'],
        [2_999_999, 'wrong'],
      ],
      'nowhere/99': [[1, 'right']],
    },
  },
  notes: {
    version: 1,
    notes: { 'lessons/joint-spacing#edge': nasties.tags, 'rules/nowhere': '\u202eabc', 'x/y': 'lost' },
  },
  'exercise-member': { className: nasties.tags, number: 1e300 },
  'exercise-tries': [
    { className: 'a', number: -1, exercise: 'e1', asked: '', entry: nasties.tags, said: '', right: true },
    7,
  ],
  sheets: {
    className: '',
    learners: 60,
    system: 'mm',
    paper: 'A4',
    print: 'both',
    exercises: Array(5000).fill('constructor'),
  },
  scratch: {
    version: 1,
    cells: [{ type: 'sum', text: '1/0' }, { type: 'note', text: nasties.tags }, { type: 'run' }],
  },
  year: {
    from: 'months',
    south: 'no',
    built: 364.4,
    months: { humidity: Array(12).fill(1e308), temperature: Array(12).fill(-1e308) },
    readings: [
      { day: 1e300, temperature: 0, humidity: -4 },
      { day: 1e300, temperature: 0, humidity: -4 },
    ],
  },
  units: 'cubits',
  ruler: 'constructor',
  'both-units': 'perhaps',
};
const wrongThings: Record<string, string> = Object.fromEntries(
  Object.entries(poisoned).map(([key, value]) => [
    key,
    typeof value === 'string' ? value : JSON.stringify(value),
  ]),
);
const damages: Record<string, Record<string, string>> = {
  'cut off': all('{"version":1,"no'),
  'from a newer version': all('{"version":2,"lessons":{"a":[]},"notes":[],"cells":{},"box":[]}'),
  'of another kind': {
    ...all('[null,{"steps":[{}]}]'),
    designs: 'null',
    done: '"text"',
    scratch: '17',
    year: 'true',
  },
  'nested without end': Object.fromEntries(
    keys.map((key) => [key, `{"version":1,"${key}":${deep},"lessons":${deep},"cells":${deep},"a":${deep}}`]),
  ),
  'full of wrong things': wrongThings,
};
const kinds = [
  ...['', 'lessons/joint-spacing/', 'lessons/a-year-of-a-panel/', 'rules/finger-fit/', 'rules/', 'my-box/'],
  ...['build-sheet/', 'templates/', 'woods/', 'exercises/', 'exercises/e1/', 'exercises/sheets/', 'scratch/'],
  ...['notebook/', 'class/', 'troubles/'],
];
/** Those that read something of the reader’s beside the box: they say at once what they found. */
const telling = [
  'lessons/joint-spacing/',
  'my-box/',
  'notebook/',
  'exercises/e1/',
  'exercises/sheets/',
  'scratch/',
];

for (const [damage, texts] of Object.entries(damages))
  test(`with every text in the store ${damage}, the pages open without an error, and those that read it say so`, async ({
    page,
  }) => {
    test.setTimeout(120_000);
    await page.addInitScript((texts) => {
      for (const [key, text] of Object.entries(texts)) localStorage.setItem(`rule-and-reason.${key}`, text);
    }, texts);
    const wrong: string[] = [];
    for (const path of damage === 'full of wrong things' ? kinds : telling) {
      const troubles = await open(page, path);
      await wakeAll(page);
      for (const one of [...troubles, ...(await slips(page))]) wrong.push(`/${path}: ${one}`);
      // Exercises that there are not are choices all the same.
      const isTold = telling.includes(path) && !(path === 'exercises/sheets/' && texts === wrongThings);
      if (isTold && (await page.getByRole('alert').count()) === 0) wrong.push(`/${path}: says nothing`);
      page.removeAllListeners();
    }
    expect(wrong).toEqual([]);
  });

const encoded = Object.entries(nasties)
  .filter(([, text]) => text.isWellFormed())
  .map(([name, text]) => [name, encodeURIComponent(text.slice(0, 1500))] as const);
const base64 = (value: unknown) => Buffer.from(JSON.stringify(value)).toString('base64url');
/** Addresses that hold something, by what may stand in them. */
const addresses: Record<string, (text: string) => string> = {
  'a box': (text) => `my-box/#box=${text}`,
  'an exercise': (text) => `exercises/e1/?class=${text}&n=${text}&u=${text}`,
  cells: (text) => `scratch/#scratch=${text}`,
  'a figure on the wall': (text) => `lessons/joint-spacing/#wall=${text}`,
  'a figure as it stood': (text) => `lessons/joint-spacing/#at=${text}&set=${text}`,
  'a block of sheets': (text) => `exercises/sheets/?block=${text}`,
  'a part of the box': (text) => `my-box/#${text}`,
  'a part of the rules': (text) => `rules/#${text}`,
};
const links: readonly [string, string][] = [
  ['cut off', `3.${base64({ wall: 12 }).slice(0, -3)}`],
  ['no base64', '3.%%%'],
  ['another version', `99.${base64({ wall: 12 })}`],
  ['a version that is a name', `constructor.${base64({ wall: 12 })}`],
  ['prototype', `3.${Buffer.from('{"__proto__":{"wall":1}}').toString('base64url')}`],
  ['nested', `3.${Buffer.from(`${'['.repeat(2500)}${']'.repeat(2500)}`).toString('base64url')}`],
  ['half a percent', '%E0%A4%A'],
];

for (const [what, address] of Object.entries(addresses))
  test(`whatever stands in the address of ${what}, the page opens and keeps what is kept`, async ({
    page,
  }) => {
    test.setTimeout(90_000);
    const wrong: string[] = [];
    const kept = JSON.stringify({ version: 1, box: { name: 'Mine', wall: 12 } });
    await page.addInitScript((kept) => localStorage.setItem('rule-and-reason.box', kept), kept);
    const troubles = await open(page, address(links[0]![1]));
    for (const [at, [name, text]] of [...links, ...encoded].entries()) {
      const before = troubles.length;
      const to = address(text);
      // A server takes no longer address than this in what is sent to it; and each of these loads the page anew.
      if (to.includes('?') && (to.length > 3000 || at % 3 > 0)) continue;
      // Where only the fragment differs the page stays, as it does for a reader.
      if (to.includes('#'))
        await page.evaluate(
          (hash) => {
            location.hash = hash;
          },
          to.slice(to.indexOf('#')),
        );
      else await page.goto(to, { waitUntil: 'load' });
      await page.waitForTimeout(to.includes('#') ? 30 : 150);
      for (const one of [...troubles.slice(before), ...(await slips(page))]) wrong.push(`${name}: ${one}`);
      await page.keyboard.press('Escape');
    }
    expect(wrong).toEqual([]);
    const wall = await page.evaluate(() => JSON.parse(localStorage.getItem('rule-and-reason.box')!).box.wall);
    expect(wall).toBe(12);
  });

/** Writes each text into each field that takes one, as if it were pasted, and leaves it. @returns what went wrong */
async function paste(page: Page, fields: string, texts: readonly string[]): Promise<string[]> {
  const wrong: string[] = [];
  const boxes = page.locator(fields);
  for (const [at, text] of texts.entries()) {
    await boxes.evaluateAll(
      async (found, { text, at }) => {
        for (const [place, field] of (found as (HTMLInputElement | HTMLTextAreaElement)[]).entries()) {
          // Numbers are read by one reader: a third of the texts each is as good as all of them.
          if (found.length > 8 && (place + at) % 3 !== 0) continue;
          if (!field.isConnected || field.readOnly || field.disabled) continue;
          // A name is the reader’s own, and shown as it is.
          if (/^(NaN|Infinity)$/.test(text) && field.inputMode === '') continue;
          field.focus();
          const write = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(field), 'value')!.set!;
          write.call(field, text);
          field.dispatchEvent(new InputEvent('input', { bubbles: true, data: text }));
          field.dispatchEvent(new Event('change', { bubbles: true }));
          field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
          await new Promise(requestAnimationFrame);
          field.blur();
        }
      },
      { text, at },
    );
    await page.waitForTimeout(20);
    for (const one of await slips(page)) wrong.push(`${JSON.stringify(text.slice(0, 40))}: ${one}`);
  }
  return wrong;
}
const everyText = Object.values(nasties);
const textFields =
  'main :is(input:not([type]), input[type=text], input[type=search], input[type=number], textarea)';

for (const path of [
  'lessons/joint-spacing/',
  'lessons/a-year-of-a-panel/',
  'exercises/e1/',
  'exercises/sheets/',
  'class/materials/',
  'woods/',
  'rules/finger-fit/',
  'scratch/',
])
  test(`whatever is pasted into the fields of /${path}, it shows no slip and throws nothing`, async ({
    page,
  }) => {
    test.setTimeout(120_000);
    const troubles = await open(page, path);
    await wakeAll(page);
    expect(await page.locator(textFields).count()).toBeGreaterThan(0);
    expect(await paste(page, textFields, everyText)).toEqual([]);
    expect(troubles).toEqual([]);
  });

test('whatever is pasted into the fields of my box: no slip, and the box can be read back as it stands', async ({
  page,
}) => {
  test.setTimeout(180_000);
  const troubles = await open(page, 'my-box/');
  const wrong: string[] = [];
  for (const part of ['inside', 'bottom']) {
    await page
      .locator('.part-names a')
      .getByText(part, { exact: true })
      .evaluate((link: HTMLElement) => link.click());
    for (const fold of await page.locator('.part details:not([open]) > summary').all())
      await fold.evaluate((one: HTMLElement) => one.click());
    wrong.push(...(await paste(page, textFields, everyText)));
  }
  expect(wrong).toEqual([]);
  await page.reload();
  await expect(page.locator('.notice')).toHaveCount(0);
  expect(await slips(page)).toEqual([]);
  expect(troubles).toEqual([]);
});

test('whatever is asked, Ask answers or says that it has nothing', async ({ page }) => {
  const troubles = await open(page, '');
  await page.locator('header').getByRole('button', { name: /^Ask/ }).click();
  const ask = page.getByRole('dialog', { name: 'Ask' }).getByRole('textbox');
  for (const text of [...everyText, 'a '.repeat(5000), 'x'.repeat(1_000_000)]) {
    await ask.fill(text.replaceAll(/[\r\n]/g, ' '));
    await page.waitForTimeout(30);
    // What was asked may be said again.
    if (!/^(NaN|Infinity)$/.test(text)) expect(await slips(page), text.slice(0, 40)).toEqual([]);
  }
  expect(troubles).toEqual([]);
});

test('a note of a million letters is kept as far as a note may be, and the page goes on', async ({
  page,
}) => {
  const troubles = await open(page, 'rules/finger-fit/');
  await wakeAll(page);
  const write = page.getByRole('button', { name: /note/ }).first();
  if (await write.isVisible()) await write.click();
  const note = page.locator('textarea').last();
  await note.fill('x'.repeat(1_000_000));
  await note.blur();
  const length = () =>
    page.evaluate(
      () =>
        (JSON.parse(localStorage.getItem('rule-and-reason.notes') ?? '{}').notes?.['rules/finger-fit'] ?? '')
          .length,
    );
  await expect.poll(length).toBeGreaterThan(3000);
  await page.reload();
  expect(troubles).toEqual([]);
});

test('hostile files of a notebook and of cells are refused in words, and all is as it was', async ({
  page,
}) => {
  const texts: Record<string, string> = {
    ...nasties,
    deep,
    'a deep notebook': `{"notebook":1,"check":"x","kept":${deep}}`,
    'a newer notebook': '{"notebook":2,"kept":{}}',
    'prototype of a notebook': '{"notebook":1,"check":"x","kept":{"__proto__":"x"}}',
    'newer cells': '{"version":2,"cells":[]}',
    'cells of nothing': '{"version":1,"cells":[null,7,{"type":"run","text":"1"}]}',
    megabyte: 'x'.repeat(1_000_000),
  };
  for (const [path, picker] of [
    ['notebook/', 'bring in a file'],
    ['scratch/', 'open a file'],
  ] as const) {
    const troubles = await open(page, path);
    await wakeAll(page);
    await page.evaluate(() =>
      localStorage.setItem('rule-and-reason.notes', '{"version":1,"notes":{"rules/finger-fit":"mine"}}'),
    );
    const before = await page.evaluate(() => JSON.stringify({ ...localStorage }));
    for (const [name, text] of Object.entries(texts)) {
      await page
        .getByLabel(picker)
        .setInputFiles({ name: `${name}.json`, mimeType: 'application/json', buffer: Buffer.from(text) });
      await expect(
        page
          .locator('main')
          .getByText(
            /Nothing was changed|as they were|damaged|does not hold|can be used|no notebook|too large/,
          )
          .first(),
        name,
      ).toBeVisible();
    }
    expect(await page.evaluate(() => JSON.stringify({ ...localStorage }))).toBe(before);
    expect(await slips(page)).toEqual([]);
    expect(troubles).toEqual([]);
  }
});
