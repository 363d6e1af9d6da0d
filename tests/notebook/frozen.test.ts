/**
 * What a reader kept once is read to the same meaning for ever. `frozen/store` holds a text of each shape under each key as a
 * version of the site wrote it, `frozen/files` what left the device. A file here is never changed: a new shape gets a file
 * beside it, and what it means stands below, written by hand.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { decodeLink, decodeStore } from '../../src/notebook/codec.ts';
import { readDesigns } from '../../src/notebook/designs.ts';
import { becomes, notebookNow } from '../../src/notebook/everything/everything.ts';
import { readNotebook } from '../../src/notebook/everything/file.ts';
import { keys } from '../../src/notebook/everything/keys.ts';
import { readFile } from '../../src/notebook/files.ts';
import { decodeCells, decodeCellsLink, readCellsFile } from '../../src/notebook/scratch/cells.ts';
import { siteVersion } from '../../src/notebook/site-version.ts';
import { standInStore } from './any-notebook.ts';

const folder = new URL('./frozen/', import.meta.url);
const textOf = (name: string) => readFileSync(new URL(name, folder), 'utf8');
const shapes = readdirSync(new URL('store/', folder));
const box = {
  ...{
    name: 'Grandmother’s “tea” box ✿',
    wall: 9,
    joint: 'dovetail',
    species: 'black-cherry',
    kind: 'sliding',
  },
  ...{ contentsLength: 150, contentsWidth: 90, contentsHeight: 25, headroom: 10, bottomGap: 0.6 },
  ...{ lidThickness: 4.5, lengthError: 0.05, pullThickness: 6, humidityToday: 45 },
  items: [{ name: 'tin', length: 80.5, width: 60, height: 40, count: 3 }],
  accepted: { 'wall-thickness': 'it was in the rack' },
};
const notes = {
  'lessons/joint-spacing#edge': 'filed 0.2 off\nthen it went in',
  'rules/finger-fit': 'Ein Hauch genügt. 木',
};
const cells = [
  { type: 'sum', text: '12 in * 0.00274 * 4' },
  { type: 'note', text: 'the lid, again' },
  { type: 'plot', text: 'panelGap(w)', over: 'w', from: '50 mm', to: '300 mm' },
];

let store: ReturnType<typeof standInStore>;
beforeEach(() => {
  store = standInStore();
  vi.resetModules();
});
const put = (key: string, shape = 1) =>
  store.texts.set(`rule-and-reason.${key}`, textOf(`store/${key}.${shape}.txt`));
/** Nothing of it was found unreadable. */
const nothingAside = async () => {
  expect([...store.texts.keys()]).not.toContain('rule-and-reason.set-aside');
  expect((await import('../../src/notebook/aside.ts')).damaged.value).toBeUndefined();
};

describe('every shape is frozen', () => {
  test.each(Object.keys(keys))('there is a text of what stands under %s', (key) => {
    expect(shapes).toContain(`${key}.1.txt`);
  });
  test('and each is of a key that is still read', () => {
    expect(shapes.map((name) => name.replace(/\.\d+\.txt$/, '')).filter((key) => !(key in keys))).toEqual([]);
  });
  test('files name the version of the site, the one of its package', () => {
    const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
    expect(siteVersion).toBe(version);
  });
});

describe('what the store keeps', () => {
  test('the box', () => {
    expect(decodeStore(textOf('store/box.1.txt'))).toMatchObject({ ok: true, box, dropped: [] });
  });

  test('kept designs', () => {
    const { good, allRead } = readDesigns(textOf('store/designs.1.txt'));
    expect(allRead).toBe(true);
    expect(good).toMatchObject([
      { name: 'First', box: { name: 'First', wall: 7 } },
      { name: box.name, box },
    ]);
  });

  test.each([1, 0])(
    'ticked steps, by the likeness of a box as it is and as it was reckoned first',
    async (shape) => {
      put('done', shape);
      const done = await import('../../src/notebook/done.ts');
      done.loadDone();
      const decoded = decodeStore(textOf('store/box.1.txt'));
      if (!decoded.ok) throw new Error(decoded.message);
      const ticked = { steps: new Set(['mill', 'grooves']), changed: false };
      expect(done.doneOf(decoded.box)).toEqual(ticked);
      expect(done.doneOf({ ...decoded.box, name: 'another name' })).toEqual(ticked);
      expect(done.doneOf({ ...decoded.box, wall: 10 })).toEqual({ ...ticked, changed: true });
      await nothingAside();
    },
  );

  test('steps of lessons', async () => {
    put('progress');
    const { loadProgress, progress, lastLesson } = await import('../../src/notebook/progress.ts');
    loadProgress();
    expect(progress.value).toEqual({
      'joint-spacing': { steps: { edge: 'done', ends: 'skipped' } },
      'wood-movement': { at: 'ring', steps: {} },
    });
    expect(lastLesson.value).toBe('wood-movement');
    await nothingAside();
  });

  test('guesses', async () => {
    put('guesses');
    const { loadGuesses, guesses } = await import('../../src/notebook/predictions.ts');
    loadGuesses();
    expect(guesses.value).toEqual({ 'panel-gap': '1.5', 'ring-direction': 'tangential', wall: 'skipped' });
    await nothingAside();
  });

  test('answers', async () => {
    put('recall');
    const { loadAnswers, answers } = await import('../../src/notebook/recall/answers.ts');
    loadAnswers();
    expect(answers.value).toEqual({
      // November 28 and December 3, 2026; February 28, 2026.
      'joint-spacing/1': [
        [20785, 'right'],
        [20790, 'guessed'],
      ],
      'wood-movement/2': [[20512, 'wrong']],
    });
    await nothingAside();
  });

  test('notes', async () => {
    put('notes');
    const kept = await import('../../src/notebook/learning/notes.ts');
    kept.loadNotes();
    expect(kept.notes.value).toEqual(notes);
    await nothingAside();
  });

  test('who does the exercises, and the tries', async () => {
    put('exercise-member');
    put('exercise-tries');
    const kept = await import('../../src/notebook/learning/exercises.ts');
    kept.loadExercises(undefined);
    const member = { className: 'Class 7b', number: 12 };
    expect(kept.member.value).toEqual(member);
    expect(kept.tries.value).toEqual([
      {
        ...member,
        exercise: 'e1',
        asked: 'outside length',
        entry: '7 3/8 in',
        said: 'That is right.',
        right: true,
      },
    ]);
    await nothingAside();
  });

  test('choices for the sheets of a class', async () => {
    put('sheets');
    const { loadSheets, sheetChoices } = await import('../../src/notebook/learning/sheets.ts');
    loadSheets();
    expect(sheetChoices.value).toEqual({
      className: 'Class 7b',
      learners: 24,
      system: 'inch',
      paper: 'Letter',
      print: 'keys',
      exercises: ['e1', 'e9'],
    });
    await nothingAside();
  });

  test('the year of air', async () => {
    put('year');
    const { loadYear, yearChoice } = await import('../../src/notebook/measure/year.ts');
    loadYear();
    expect(yearChoice.value).toMatchObject({
      from: 'readings',
      south: true,
      built: 59,
      readings: [
        { day: 20, temperature: 19.5, humidity: 33 },
        { day: 200, temperature: 25, humidity: 61 },
      ],
    });
    expect(yearChoice.value.months.humidity[1]).toBe(28);
    await nothingAside();
  });

  test('measurements, weighings and what is known of a piece', async () => {
    put('measurements');
    const { kept, loadMeasurements } = await import('../../src/notebook/measure/measurements.ts');
    loadMeasurements();
    const lid = { box: 'Grandmother’s “tea” box ✿', what: 'lid-play', reading: 0.05 };
    expect(kept.value).toEqual({
      measurements: [
        { ...lid, date: '2026-02-28', measured: 1.2, temperature: 19.5, humidity: 33 },
        { ...lid, date: '2028-02-29', measured: 0.4, meter: 11.5 },
      ],
      weighings: [
        { piece: 'lid', date: '2026-03-01', mass: 212.4 },
        { piece: 'lid', date: '2026-03-04', mass: 208.1 },
      ],
      pieces: { lid: { thickness: 9, reading: 0.1, dry: 188 } },
    });
    await nothingAside();
  });

  test('the space between letters', async () => {
    put('spacing');
    expect((await import('../../src/notebook/text-spacing.ts')).isWide.value).toBe(true);
  });

  test('scratch cells, and those from before', () => {
    expect(decodeCells(textOf('store/scratch.1.txt'), '')).toEqual({ ok: true, cells, dropped: 0 });
    expect(decodeCells(textOf('store/scratch.before.1.txt'), '')).toEqual({
      ok: true,
      cells: [{ type: 'sum', text: 'box.inside.width / 1.618 to in' }],
      dropped: 0,
    });
  });

  test('texts set aside', async () => {
    const { readAsides } = await import('../../src/notebook/aside.ts');
    expect(readAsides(textOf('store/set-aside.1.txt'))).toEqual([
      { key: 'notes', text: '{"version":2,"pages":[]}' },
    ]);
  });

  test('the ruler and its units', async () => {
    put('ruler');
    vi.stubGlobal('document', { documentElement: { dataset: { units: textOf('store/units.1.txt') } } });
    const { ruler, units } = await import('../../src/notebook/units.ts');
    expect([ruler.value.name, ruler.value.mark, units.value]).toEqual([
      '1/32 in',
      expect.any(Number),
      'inch',
    ]);
    vi.stubGlobal('document', undefined);
    expect(textOf('store/both-units.1.txt')).toBe('yes');
  });
});

describe('what left the device', () => {
  const file = (name: string) => new Blob([textOf(`files/${name}`)]);

  test('files of a box, without notes and with them', async () => {
    expect(await readFile(file('design-1.json'))).toMatchObject({ ok: true, box, dropped: [], notes: {} });
    expect(await readFile(file('design-2.json'))).toMatchObject({ ok: true, box, dropped: [], notes });
  });

  test('links of every version', () => {
    const inLink = (version: number) => decodeLink(textOf(`files/link-${version}.txt`));
    const old = { name: 'Old box', wall: 12 };
    // Each keeps the example of its day: 18 mm of height, 0.1 mm of error; then 25 mm; then 0.05 mm.
    expect(inLink(1)).toMatchObject({
      ok: true,
      dropped: [],
      box: {
        ...old,
        lid: 'plywood',
        contentsLength: 175,
        contentsHeight: 18,
        lengthError: 0.1,
        bottomGap: 0.65,
      },
    });
    expect(inLink(2)).toMatchObject({
      ok: true,
      dropped: [],
      box: {
        ...old,
        lid: 'solid',
        contentsLength: 150,
        contentsHeight: 31.5,
        lengthError: 0.1,
        bottomGap: 0.6,
      },
    });
    expect(inLink(3)).toMatchObject({ ok: true, box, dropped: [] });
  });

  test('scratch cells as a file and as a link', async () => {
    const read = { ok: true, cells, dropped: 0 };
    expect(await readCellsFile(file('scratch-1.json'))).toEqual(read);
    expect(decodeCellsLink(textOf('files/scratch-link-1.txt'))).toEqual(read);
  });

  test('the file of everything: it is brought in, and each key holds what it held', () => {
    const read = readNotebook(textOf('files/notebook-1.json'));
    if (!read.ok) throw new Error(read.message);
    expect(read).toMatchObject({ made: '2026-11-28', unknown: 0 });
    expect(becomes(read.kept)).toBe(true);
    for (const [key, text] of Object.entries(notebookNow()))
      expect(text, key).toBe(textOf(`store/${key}.1.txt`));
    expect(Object.keys(read.kept).length).toBe(18 + 1);
  });

  test.each([
    ['design-1.json', 'site'],
    ['design-2.json', 'site'],
    ['scratch-1.json', 'site'],
    ['notebook-1.json', 'site'],
  ])('%s says under “%s” which version wrote it', (name, under) => {
    expect(JSON.parse(textOf(`files/${name}`))[under]).toBe('0.1.0');
  });
});
