/**
 * Hands on the keyboard, and ears: a press never throws the reader out of where they are, every number field says its
 * unit, and what is half typed stays.
 * Over 150 lines: one reader who has only keys, on all pages.
 */
import { expect, type Locator, type Page, test } from '@playwright/test';
import type { Box } from '../../src/box/subjects/inputs.ts';
import { fieldsNameTheirUnits } from './every-page/units-of-fields.ts';
import { type BenchPart, chooseUnits, linkTo, numberField, open, openDrawer, takePart } from './site.ts';

test.use({ locale: 'en-GB' });

/** The parts of the bench as links name them. */
const partsOfBench = ['inside', 'walls', 'corners', 'grooves', 'bottom', 'lid', 'air', 'board', 'accuracy'];

const myBoxWith = (changes: Partial<Box>) => linkTo('my-box/', changes);
const cards = { name: 'cards', length: 90, width: 60, height: 20, count: 1 };
const coins = { name: 'coins', length: 25, width: 25, height: 2, count: 4 };

/** Presses a button by keyboard; then the focus, wherever it went, is still in this part of the page. */
async function press(button: Locator, stayIn: Locator): Promise<void> {
  await button.focus();
  await button.press('Enter');
  await focusIsIn(stayIn);
}

async function focusIsIn(part: Locator): Promise<void> {
  const where = () =>
    part.evaluate((element) =>
      element.contains(document.activeElement)
        ? 'inside'
        : `on ${document.activeElement?.outerHTML.slice(0, 200)}`,
    );
  await expect.poll(where).toBe('inside');
  // Drawings that wait until the hand rests come later.
  await part.page().waitForTimeout(300);
  expect(await where()).toBe('inside');
}
const named = (within: Page | Locator, name: string | RegExp) =>
  within.getByRole('button', { name, exact: true });
/** Skips every guess of the page, and unfolds what its steps hold. */
async function uncover(page: Page): Promise<void> {
  const skip = named(page, /^(skip, |just )show me$/);
  for (let left = await skip.count(); left > 0; left--) await skip.first().press('Enter');
  for (const fold of await page.locator('.more-of-it > summary').all())
    if (await fold.isVisible()) await fold.press('Enter');
}
/** The list of things on the bench, unfolded. */
async function thingsOf(page: Page): Promise<Locator> {
  await takePart(page, 'inside');
  return page.locator('.contents');
}

test.describe('the focus stays with the reader', () => {
  test('who guesses, guesses again and skips', async ({ page }) => {
    await open(page, 'lessons/wall-thickness/');
    const guesses = await page.locator('.guess-card').all();
    expect(guesses.length).toBeGreaterThan(1);
    for (const guess of guesses) {
      const give = guess.locator('button[type=submit]');
      await give.press('Enter');
      await expect(guess.locator('.message[role=status]')).not.toBeEmpty();
      await expect(give).toBeFocused();
      if ((await guess.getByRole('radio').count()) > 0) await guess.getByRole('radio').first().check();
      else await guess.getByRole('textbox').fill('2');
      await press(give, guess);
      await expect(guess.locator('.guess-answer')).toBeFocused();
      await press(named(guess, 'guess again'), guess.locator('.guess-form'));
      await press(named(guess, 'just show me'), guess);
      await expect(guess.locator('.guess-answer')).toBeFocused();
    }
  });

  test('who takes their own box, or puts the lesson’s numbers into it', async ({ page }) => {
    for (const button of ['use my box', 'put these in my box']) {
      await open(page, 'lessons/joint-spacing/');
      await uncover(page);
      const pinned = page.locator('.pinned', { has: named(page, button) }).first();
      const title = await page.locator('.lab', { has: pinned }).first().getAttribute('aria-label');
      const lab = page.getByRole('region', { name: title!, exact: true });
      await press(named(pinned, button), lab);
      await expect(lab.locator('.pinned')).toBeFocused();
    }
  });

  test('who asks for other numbers', async ({ page }) => {
    await open(page, 'lessons/proportion/');
    await press(named(page, 'other numbers'), page.locator('.exercise'));
  });

  test('who takes a ring angle or a year of air into their box', async ({ page }) => {
    for (const [path, button] of [
      ['lessons/reading-the-board/', 'put this ring angle in my box'],
      ['lessons/a-year-of-a-panel/', 'put this air in my box'],
    ] as const) {
      await open(page, path);
      await uncover(page);
      for (const more of await page.locator('details.more > summary').all())
        if (await more.isVisible()) await more.press('Enter');
      const put = named(page, button).first();
      await put.scrollIntoViewIfNeeded();
      const lab = page.locator('.lab', { has: page.getByRole('button', { name: button }) }).first();
      const label = await lab.getAttribute('aria-label');
      await press(put, page.getByRole('region', { name: label!, exact: true }));
    }
  });

  test('who lays things, and takes them out one by one', async ({ page }) => {
    await open(page, myBoxWith({ items: [cards, coins, { ...coins, name: 'rings' }] }));
    const contents = await thingsOf(page);
    const ways = contents.locator('.ways');
    await press(named(ways, 'lay them like this').nth(1), ways);
    await expect(ways.getByRole('button', { pressed: true })).toBeFocused();
    await press(named(contents, 'more ways'), contents);
    await press(named(contents, 'take out coins'), contents);
    await expect(contents.getByRole('textbox', { name: 'thing' }).nth(1)).toBeFocused();
    await expect(contents.getByRole('textbox', { name: 'thing' }).nth(1)).toHaveValue('rings');
    await press(named(contents, 'take out rings'), contents);
    await expect(contents.getByRole('textbox', { name: 'thing' })).toBeFocused();
    await press(named(contents, 'take out cards'), contents);
    await expect(contents.getByLabel('add')).toBeFocused();
  });

  test('who adds the twentieth thing, the last there is room for', async ({ page }) => {
    await open(page, myBoxWith({ items: Array.from({ length: 19 }, () => coins) }));
    const contents = await thingsOf(page);
    await contents.getByLabel('add').focus();
    await contents.getByLabel('add').selectOption('my own');
    await expect(contents.getByLabel('add')).toHaveCount(0);
    await focusIsIn(contents.locator('.item').last());
  });

  test('who goes back to the first step and forward to the last, and reads what each step is', async ({
    page,
  }) => {
    await open(page, 'my-box/#walls');
    await numberField(page, 'wall thickness').fill('12');
    await numberField(page, 'wall thickness').press('Enter');
    const back = page.getByRole('button', { name: /^undo/ });
    await expect(back).toBeEnabled();
    // The grooves keep their share of the wall.
    await expect(back).toHaveText('undo: wall thickness and 2 more');
    await press(back, page.locator('.bench-top'));
    await expect(back).toBeFocused();
    await expect(back).toBeDisabled();
    await expect(numberField(page, 'wall thickness')).toHaveValue('8');
    const forward = named(page, 'redo');
    await press(forward, page.locator('.bench-top'));
    await expect(forward).toBeFocused();
    await expect(numberField(page, 'wall thickness')).toHaveValue('12');
  });

  test('who keeps, replaces, compares, deletes and puts back a design', async ({ page }) => {
    await open(page, 'my-box/');
    await openDrawer(page, 'my boxes');
    const designs = page.locator('.designs');
    await focusIsIn(designs);
    const keep = named(designs, 'keep it on this device');
    await press(keep, designs);
    await press(keep, designs);
    await press(named(designs, 'replace the kept one'), designs);
    await press(keep, designs);
    // To keep both, the name is to be changed.
    await press(named(designs, 'leave it'), page.locator('.bench-top h1'));
    await press(named(designs, 'open'), designs);
    const comparison = page.locator('.compare');
    const compare = named(designs, 'compare with mine');
    await compare.press('Enter');
    await focusIsIn(comparison);
    await press(named(comparison, 'close the comparison'), designs);
    await expect(compare).toBeFocused();
    await press(named(designs, /^delete/), designs);
    await expect(named(designs, 'put it back')).toBeFocused();
    await press(named(designs, 'put it back'), designs);
    await expect(named(designs, 'open')).toBeFocused();
  });

  test('who mends what cannot be built, until nothing is left to mend', async ({ page }) => {
    await open(page, myBoxWith({ grooveDepth: 15, fingerWidth: 25 }));
    const tapes = page.getByRole('list', { name: 'Warnings', exact: true });
    const broken = tapes.locator('.tape.breaks:has(.mend:is(button))');
    await expect(broken.first()).toBeVisible();
    for (let left = 10; left > 0 && (await broken.count()) > 0; left--)
      await press(broken.first().locator('.mend'), tapes);
    await expect(broken).toHaveCount(0);
    await expect(tapes.locator('.mended').first()).toBeVisible();
    // Another part clears the bench.
    await takePart(page, 'inside');
    await expect(tapes.locator('.mended')).toHaveCount(0);
  });

  test('who changes what a rule finds unusual, also in another way than the smallest', async ({ page }) => {
    await open(page, `${myBoxWith({ wall: 5 })}&walls`);
    const tapes = page.getByRole('list', { name: 'Warnings', exact: true });
    const other = tapes.locator('.tape:not(.brief)', { hasText: 'other ways' }).first();
    const check = await other.getAttribute('data-check');
    await other.locator('summary', { hasText: 'other ways' }).press('Enter');
    await press(other.locator('.tape-more ul button').first(), tapes.locator(`[data-check="${check}"]`));
    const mend = tapes.locator('button.mend').first();
    await expect(mend).toBeVisible();
    await press(mend, tapes);
  });

  test('who takes a part by its name, and goes on to its controls', async ({ page }) => {
    await open(page, 'my-box/');
    for (const part of ['inside', 'grooves', 'wood and air']) {
      const link = page
        .getByRole('navigation', { name: 'Parts of the box' })
        .getByRole('link', { name: part });
      await link.focus();
      await link.press('Enter');
      await expect(page.locator('.part h2')).toBeFocused();
      await expect(page.locator('.part h2')).toHaveText(new RegExp(part, 'i'));
      await page.keyboard.press('Tab');
      await focusIsIn(page.locator('.part'));
    }
  });

  test('who closes a notice', async ({ page }) => {
    await open(page, 'my-box/#box=1.%%%');
    await named(page, 'close').press('Enter');
    await expect(page.getByRole('alert')).toHaveCount(0);
    await expect(page.locator('#main')).toBeFocused();
  });

  test('who leaves woods out of a comparison', async ({ page }) => {
    await open(page, 'woods/');
    await page.getByRole('checkbox', { name: 'red alder', exact: true }).check();
    const comparison = page.locator('.comparison');
    for (let left = 2; left > 0; left--) await press(named(comparison, /^leave out/).last(), comparison);
    await expect(comparison.getByRole('heading')).toBeFocused();
  });

  test('who chooses another way to build, when other inputs come and go around the choice', async ({
    page,
  }) => {
    await open(page, 'my-box/');
    for (const [part, label] of [
      ['lid', 'kind of box'],
      ['inside', 'the size comes from'],
      ['corners', 'corner joint'],
      ['bottom', 'bottom'],
      ['lid', 'pull'],
    ] as const) {
      await takePart(page, part);
      const choice = page.getByRole('combobox', { name: label, exact: true });
      // A lid that does not slide has no pull.
      if (label === 'pull' && (await choice.count()) === 0) continue;
      await choice.focus();
      const before = await choice.inputValue();
      await choice.press('ArrowDown');
      await expect(choice).not.toHaveValue(before);
      await focusIsIn(choice);
    }
  });
});

for (const part of partsOfBench)
  test(`the number fields of my box name their units: ${part}`, async ({ page }) => {
    await open(page, `my-box/#${part}`);
    await fieldsNameTheirUnits(page);
  });

test('a number field names its unit in words, and in a length it is millimeters or inches', async ({
  page,
}) => {
  await open(page, 'my-box/');
  await takePart(page, 'walls');
  const wall = numberField(page, 'wall thickness');
  await expect(wall).toHaveAccessibleName('wall thickness in millimeters');
  await takePart(page, 'inside');
  await expect(page.locator('.item input').nth(1)).toHaveAccessibleName('length in millimeters');
  await expect(page.locator('.item input').nth(4)).toHaveAccessibleName('how many');
  await chooseUnits(page, 'inch');
  await expect(page.locator('.item input').nth(1)).toHaveAccessibleName('length in inches');
  await takePart(page, 'walls');
  await expect(wall).toHaveAccessibleName('wall thickness in inches');
  await takePart(page, 'wood and air');
  await expect(numberField(page, 'temperature')).toHaveAccessibleName('temperature in degrees Fahrenheit');
});

test('a year drier at its dampest than at its driest is told beside the field that was changed', async ({
  page,
}) => {
  await open(page, 'lessons/wood-movement/');
  const mine = page.locator('.put-in-my-box');
  await mine.scrollIntoViewIfNeeded();
  await mine.getByText('more to change').click();
  const dry = numberField(mine, 'humidity at the driest');
  await dry.fill('80');
  await dry.press('Enter');
  await expect(mine.getByRole('alert')).toHaveText(/driest time of the year is damper than the dampest/);
  await expect(dry).toHaveAccessibleDescription(/swap the two/);
  await expect(numberField(mine, 'humidity at the dampest')).toHaveAccessibleDescription(/swap the two/);
  await dry.fill('35');
  await dry.press('Enter');
  await expect(mine.getByRole('alert')).toHaveCount(0);
  await expect(dry).not.toHaveAccessibleDescription(/swap the two/);
});

test.describe('what is half typed stays', () => {
  /** Text fields of my box by the part they stand in, each with something half typed into it. */
  const halfTyped = (page: Page): readonly (readonly [BenchPart, Locator, string])[] => [
    ['walls', numberField(page, 'wall thickness'), '1'],
    ['wood and air', numberField(page, 'temperature'), '1'],
    ['inside', page.locator('.item input').first(), 'Half a na'],
    ['inside', page.locator('.item input').nth(1), '4'],
    ['inside', page.locator('.item input').nth(4), '1'],
    ['walls', page.getByLabel('name of this box'), 'Half a na'],
    ['walls', page.getByLabel('I know; because').first(), 'since it'],
  ];

  test('while another tab changes the box, steps back and chooses units', async ({ page, context }) => {
    await open(page, myBoxWith({ wall: 20 }));
    const other = await context.newPage();
    await open(other, 'my-box/');
    await takePart(other, 'the board');
    const kept = () =>
      page.evaluate(
        () => JSON.parse(localStorage.getItem('rule-and-reason.box') ?? '{}').box?.kerf as number,
      );
    // The board's saw cut is in no sight of this tab: what arrives is seen in its cut list.
    const before = await kept();
    let kerf = 1;
    for (const [part, field, text] of halfTyped(page)) {
      await page.bringToFront();
      await takePart(page, part);
      const accept = page.locator('.tape summary', { hasText: 'I know' }).first();
      if (text === 'since it') await accept.click();
      await field.focus();
      await page.keyboard.press('Control+A');
      await page.keyboard.type(text);
      const otherKerf = numberField(other, 'kerf: width of the saw cut');
      kerf += 0.1;
      await otherKerf.evaluate((input: HTMLInputElement, value) => {
        input.value = value;
        for (const name of ['input', 'change']) input.dispatchEvent(new Event(name, { bubbles: true }));
      }, kerf.toFixed(1));
      await expect.poll(kept, 'the other tab’s change arrives').toBeCloseTo(kerf, 6);
      await other
        .getByRole('button', { name: /^undo/ })
        .evaluate((button: HTMLButtonElement) => button.click());
      await expect.poll(kept, 'and is taken back').toBeCloseTo(before, 6);
      await expect(field).toHaveValue(text);
      await expect(field).toBeFocused();
      for (const units of ['inch', 'mm']) {
        await other
          .locator(`details.my-ruler input >> nth=${units === 'inch' ? 1 : 5}`)
          .evaluate((radio: HTMLInputElement) => radio.click());
        await expect(other.locator('html')).toHaveAttribute('data-units', units);
        await expect(field).toHaveValue(text);
      }
      await field.press('Escape');
    }
  });

  test('also what could not be used, in each field by itself, when a row above is taken out', async ({
    page,
  }) => {
    await open(page, myBoxWith({ items: [cards, coins] }));
    await thingsOf(page);
    const inputs = page.locator('.item').nth(1).locator('input');
    for (const column of [1, 2]) {
      await inputs.nth(column).fill('wide');
      await inputs.nth(column).press('Enter');
    }
    await expect(page.locator('.item').nth(1).getByRole('alert')).toHaveCount(2);
    await named(page, 'take out cards').press('Enter');
    const left = page.locator('.item').first().locator('input');
    await expect(left.first()).toHaveValue('coins');
    for (const column of [1, 2]) await expect(left.nth(column)).toHaveValue('wide');
  });

  test('in a guess and an exercise when the units change', async ({ page }) => {
    await open(page, 'lessons/wood-movement/');
    const answer = page.locator('.exercise').getByRole('textbox');
    await answer.fill('0.');
    await expect(answer).toHaveAccessibleName(/ in millimeters$/);
    await chooseUnits(page, 'inch');
    await expect(answer).toHaveValue('0.');
    await expect(answer).toHaveAccessibleName(/ in inches$/);
  });
});
