/**
 * The bench of my box by pointer, touch and keys: the drawing stays in sight, a part is one touch away, a warning is mended
 * by one press, and nothing moves under the hand. (Over 150 lines: one page, all its ways.)
 */
import { expect, type Locator, type Page, test } from '@playwright/test';
import { exampleBox } from '../../src/box/subjects/example.ts';
import { type Box, fields, hasInput } from '../../src/box/subjects/inputs.ts';
import { type BenchPart, benchParts, linkTo, open, swipe, takePart } from './site.ts';

test.use({ locale: 'en-GB' });

const heading = (page: Page) => page.locator('.part h2');
const drawing = (page: Page) => page.locator('.turning');
const warnings = (page: Page) => page.getByRole('list', { name: 'Warnings', exact: true });
const kept = (page: Page): Promise<Box | undefined> =>
  page.evaluate(() => JSON.parse(localStorage.getItem('rule-and-reason.box') ?? '{}').box);
const topOf = async (of: Locator) => (await of.boundingBox())!.y;
/** What is drawn, but for the grain: a worker computes that when the hand is still, so it may be there or not yet. */
const pathOf = (page: Page) =>
  drawing(page)
    .locator('svg')
    .evaluate((svg) => {
      const copy = svg.cloneNode(true) as SVGElement;
      for (const line of copy.querySelectorAll('.grain-line')) line.remove();
      return copy.innerHTML;
    });

test.describe('every input that the box has is reached', () => {
  const boxes: Readonly<Record<string, Partial<Box>>> = {
    'sliding, fingers, floating solid bottom': {},
    'lift-off, dovetails, plywood, a given inside': {
      kind: 'lift-off',
      joint: 'dovetail',
      bottom: 'plywood',
      sizeFrom: 'inside',
      dividersAcross: 2,
    },
    'hinged, keyed miters, a given outside, a glued pull': {
      kind: 'sawn',
      joint: 'keyed-mitre',
      sizeFrom: 'outside',
      pull: 'glued',
    },
    'sliding, a glued pull': { pull: 'glued' },
  };
  for (const [name, changes] of Object.entries(boxes))
    test(name, async ({ page }) => {
      await open(page, linkTo('my-box/', changes));
      const found: string[] = [];
      for (const part of benchParts) {
        await takePart(page, part);
        found.push(
          ...(await page
            .locator('.part .control:not(.direct) > label')
            .evaluateAll((labels) => labels.map((label) => label.firstChild?.textContent?.trim() ?? ''))),
        );
      }
      const box = { ...exampleBox, ...changes };
      const wanted = (Object.keys(fields) as (keyof Box)[])
        .filter((name) => ['number', 'choice'].includes(fields[name].type) && hasInput(name, box))
        .map((name) => fields[name].label);
      expect(found.sort()).toEqual(wanted.sort());
    });
});

test('the drawing stays in sight while the controls scroll, beside them and above them', async ({ page }) => {
  for (const size of [
    { width: 1280, height: 720 },
    { width: 390, height: 844 },
    { width: 844, height: 390 },
  ]) {
    await page.setViewportSize(size);
    await page.goto('about:blank');
    await open(page, 'my-box/#lid');
    await takePart(page, 'lid');
    const last = page.locator('.part .control').last();
    // As far as it must, no further: the end of the page has no drawing.
    await last.evaluate((control) => control.scrollIntoView({ block: 'end' }));
    await expect(last).toBeInViewport();
    await expect(drawing(page).locator('svg')).toBeInViewport({ ratio: 0.9 });
  }
});

test('the first screen of a phone says whether the box works, with the box and a control', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, 'my-box/');
  const bar = await topOf(page.locator('.part-bar'));
  for (const one of [
    drawing(page).locator('svg'),
    page.locator('.glass svg'),
    page.locator('.chip'),
    page.locator('.part .control').first(),
  ]) {
    const box = (await one.boundingBox())!;
    expect(box.y).toBeGreaterThanOrEqual(0);
    expect(box.y + box.height).toBeLessThanOrEqual(bar);
  }
  await expect(page.locator('.chip')).toHaveText(/^works, +\d to look at$/);
  // It was 14,600 px long before there was a bench.
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(2400);
});

test.describe('a part is taken', () => {
  test('by a touch on the drawing, also a little beside it', async ({ page }) => {
    await open(page, 'my-box/#inside');
    for (const part of ['corners', 'grooves'] as const) {
      await page.getByRole('button', { name: 'lid off' }).click();
      const mark = (await page.locator(`.leaders [data-part="${part}"] circle`).boundingBox())!;
      await page.mouse.click(mark.x + mark.width / 2 + 6, mark.y + mark.height / 2 + 5);
      await expect(heading(page)).toHaveText(new RegExp(part, 'i'));
    }
    await page.getByRole('button', { name: 'closed' }).click();
    const lid = (await page.locator('.leaders [data-part="lid"] circle').boundingBox())!;
    await page.mouse.click(lid.x + 4, lid.y + 4);
    await expect(heading(page)).toHaveText('Lid');
    // Far from any wood nothing is taken.
    const sheet = (await drawing(page).boundingBox())!;
    await page.mouse.click(sheet.x + 3, sheet.y + 3);
    await expect(heading(page)).toHaveText('Lid');
  });

  test('from the bar of a phone, one after the other and from the list', async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await open(page, 'my-box/#walls');
    await page.evaluate(() => scrollTo(0, 600));
    await page.getByRole('button', { name: /^on to/ }).click();
    await expect(heading(page)).toHaveText('Corners');
    await expect.poll(() => topOf(page.locator('.plate'))).toBeLessThan(2);
    await page.getByRole('button', { name: /^back to/ }).click();
    await expect(heading(page)).toHaveText('Walls');
    await page.getByRole('button', { name: /all parts$/ }).click();
    const list = page.getByRole('dialog', { name: 'Parts of the box' });
    await expect(list.getByRole('button')).toHaveCount(benchParts.length + 1);
    await list.getByRole('button', { name: /^grooves/ }).click();
    await expect(list).toBeHidden();
    await expect(heading(page)).toHaveText('Grooves');
    await expect(heading(page)).toBeFocused();
    await page.getByRole('button', { name: /all parts$/ }).click();
    await page.keyboard.press('Escape');
    await expect(list).toBeHidden();
  });

  test('by a link from another page', async ({ page }) => {
    await open(page, 'rules/wall-thickness/');
    await page.goto('my-box/#corners');
    await expect(heading(page)).toHaveText('Corners');
  });

  test('by a link to one input, which leads to its control, also where that is folded', async ({ page }) => {
    await open(page, 'my-box/#humidityDry');
    await expect(heading(page)).toHaveText('Wood and air');
    await expect(page.getByRole('textbox', { name: /^humidity at the driest/ })).toBeFocused();
    await page.goto('my-box/#species');
    await expect(page.getByRole('combobox', { name: 'wood', exact: true })).toBeFocused();
  });
});

test.describe('the box turns', () => {
  test('by its buttons, by arrow keys and by dragging, and stands as its part needs it', async ({ page }) => {
    await open(page, 'my-box/#walls');
    await expect(page.getByRole('button', { name: 'closed' })).toHaveAttribute('aria-pressed', 'true');
    const seen = new Set([await pathOf(page)]);
    const changes = async (how: string) => {
      await expect.poll(async () => seen.has(await pathOf(page)), how).toBe(false);
      seen.add(await pathOf(page));
    };
    await page.locator('.plate-foot').getByRole('button', { name: 'turn right' }).click();
    await changes('turn');
    await page.getByRole('button', { name: 'tip up' }).click();
    await changes('tip');
    await drawing(page).focus();
    await page.keyboard.press('ArrowLeft');
    await changes('arrow left');
    await page.keyboard.press('ArrowLeft');
    await changes('arrow left');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await changes('arrow down');
    const { x, y, width, height } = (await drawing(page).boundingBox())!;
    await page.mouse.move(x + width / 2, y + height / 2);
    await page.mouse.down();
    await page.mouse.move(x + width / 2 + 33, y + height / 2, { steps: 3 });
    await changes('drag');
    await page.mouse.up();
    // A drag takes no part.
    await expect(heading(page)).toHaveText('Walls');
    await takePart(page, 'lid');
    await expect(page.getByRole('button', { name: 'open', exact: true })).toHaveAttribute(
      'aria-pressed',
      'true',
    );
    await page.getByRole('button', { name: 'apart' }).click();
    await changes('apart');
  });
});

test.describe('warnings', () => {
  test('are mended by one press: the place stays as high as it was, until another part is chosen', async ({
    page,
  }) => {
    await open(page, 'my-box/#lid');
    const tape = warnings(page).locator('.tape').first();
    await expect(tape).toHaveClass(/look/);
    const check = (await tape.getAttribute('data-check'))!;
    const [high, panel] = [(await tape.boundingBox())!.height, await topOf(heading(page))];
    await tape.locator('.mend').click();
    const place = warnings(page).locator(`[data-check="${check}"]`);
    await expect(place).toHaveText(/mended/);
    expect(Math.abs((await place.boundingBox())!.height - high)).toBeLessThanOrEqual(1);
    expect(Math.abs((await topOf(heading(page))) - panel)).toBeLessThanOrEqual(1);
    await expect(page.getByRole('button', { name: /^undo: growth rings/ })).toBeVisible();
    await takePart(page, 'walls');
    await expect(place).toHaveCount(0);
  });

  test('come when the hand rests, and what is touched does not move', async ({ page }) => {
    for (const size of [
      { width: 1280, height: 500 },
      { width: 390, height: 844 },
    ]) {
      await page.setViewportSize(size);
      await page.goto('about:blank');
      await open(page, `${linkTo('my-box/', { lidPlay: 1.2 })}&lid`);
      await takePart(page, 'lid');
      const slider = page.getByRole('slider', { name: /^play of the lid/ });
      await slider.scrollIntoViewIfNeeded();
      await slider.focus();
      // The page must have been scrolled a little, to have room above.
      await page.evaluate(() => scrollBy(0, 60));
      const before = await topOf(slider);
      await page.keyboard.press('Home');
      const broken = page.locator('.tape.breaks').first();
      await page.waitForTimeout(250);
      await expect(broken).toHaveCount(0);
      // What is short is seen at once.
      await expect(
        page.locator(size.width < 600 ? '.chip.breaks' : '.part-names .count.breaks').first(),
      ).toBeVisible();
      await expect(broken).toBeAttached();
      await page.waitForTimeout(150);
      expect(Math.abs((await topOf(slider)) - before), `${size.width} px wide`).toBeLessThanOrEqual(2);
    }
  });

  test('share a tape where one change mends them, and what breaks tells its numbers in full', async ({
    page,
  }) => {
    // 8 mm fingers in a height of 55: neither whole nor odd, and a sliver at the edge; the same height mends both.
    await open(page, `${linkTo('my-box/', { headroom: 9 })}&corners`);
    const shared = warnings(page).locator('.tape', { has: page.locator('.tape-says p:nth-child(2)') });
    await expect(shared).toHaveCount(1);
    await expect(shared.locator('.tape-says p').nth(1)).toContainText('and');
    const together = await shared.locator('.tape-says p').count();
    const before = await warnings(page).locator('.tape-says p').count();
    await shared.locator('.mend').click();
    await expect(warnings(page).locator('.tape-says p')).toHaveCount(before - together);

    await page.goto('about:blank');
    await open(page, `${linkTo('my-box/', { lidPlay: 0.1 })}&lid`);
    const broken = warnings(page).locator('.tape.breaks').first();
    await expect(broken).toContainText(/breaks · lid/);
    await expect(broken).toContainText(/play beside the lid, both sides: 0\.1\smm, usual/, {
      useInnerText: true,
    });
    await expect(broken.locator('.mend')).toContainText('play of the lid');
    await broken.locator('.mend').click();
    await expect(warnings(page).locator('[data-check=lid-clearance]')).toHaveText(/mended/);
    // The play it needs, by the lesson on wood movement; the smallest change gives no more than that takes.
    expect((await kept(page))!.lidPlay).toBeGreaterThan(0.9);
    expect((await kept(page))!.lidPlay).toBeLessThan(1.2);
  });

  test('are left on purpose with a reason, which goes onto the sheet; without it they are back', async ({
    page,
  }) => {
    await open(page, 'my-box/#lid');
    const tape = warnings(page).locator('.tape').first();
    const check = (await tape.getAttribute('data-check'))!;
    await tape.locator('summary', { hasText: 'I know' }).click();
    const reason = tape.getByLabel('I know; because');
    await reason.fill('the figure is worth it');
    await reason.press('Enter');
    await expect(warnings(page).locator(`[data-check="${check}"]`)).toHaveText(/accepted/);
    expect((await kept(page))!.accepted[check]).toBe('the figure is worth it');
    const left = page.locator('.accepted-rules');
    await left.locator('summary').first().click();
    await left.getByLabel('I know; because').fill('');
    await left.getByLabel('I know; because').press('Enter');
    await expect(left).toHaveCount(0);
    await expect(warnings(page).locator(`[data-check="${check}"] .mend`)).toBeVisible();
  });

  test('about what cannot be built stand first, and the last box that could be drawn stays', async ({
    page,
  }) => {
    await open(page, linkTo('my-box/', { sizeFrom: 'outside', wantedWidth: 60 }));
    await takePart(page, 'walls');
    const before = await pathOf(page);
    expect(before).toContain('class="face');
    const wall = page.getByRole('textbox', { name: /^wall thickness/ });
    await wall.fill('25');
    await wall.press('Enter');
    await takePart(page, 'inside');
    const width = page.getByRole('textbox', { name: /^wanted width/ });
    await width.fill('40');
    await width.press('Enter');
    await expect(warnings(page).locator('.tape').first()).toHaveClass(/breaks/);
    await expect(warnings(page).locator('.tape').first()).toContainText('No room is left');
    expect(await pathOf(page)).toContain('class="face');
    await page.getByRole('button', { name: /^undo/ }).click();
    await page.getByRole('button', { name: /^undo/ }).click();
    await takePart(page, 'walls');
    await expect.poll(() => pathOf(page)).toBe(before);
  });

  test('are all at hand on a phone, from the state of the checks', async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await open(page, 'my-box/#walls');
    await expect(warnings(page)).toHaveCount(0);
    const chip = page.locator('.chip');
    await chip.click();
    await expect(chip).toHaveAttribute('aria-expanded', 'true');
    await expect(warnings(page).locator('.tape')).toHaveCount(2);
    await expect(warnings(page).locator('.tape').first()).toBeInViewport();
    await warnings(page).getByRole('link', { name: 'grooves' }).click();
    await expect(heading(page)).toHaveText('Grooves');
    await expect(chip).toHaveAttribute('aria-expanded', 'false');
  });
});

test.describe('touch', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } });

  for (const part of benchParts)
    test(`a vertical swipe that begins on any control of “${part}” scrolls and changes nothing`, async ({
      page,
    }) => {
      await open(page, linkTo('my-box/', { wall: 9 }));
      await takePart(page, part);
      const devtools = await page.context().newCDPSession(page);
      const before = JSON.stringify(await kept(page));
      const count = await page.locator('.part :is(input, select)').count();
      expect(count).toBeGreaterThan(0);
      for (let index = 0; index < count; index++) {
        const control = page.locator('.part :is(input, select)').nth(index);
        await control.evaluate((element) => {
          element.scrollIntoView({ block: 'center' });
        });
        const box = (await control.boundingBox())!;
        for (const share of [0.2, 0.8])
          await swipe(devtools, [box.x + box.width * share, box.y + box.height / 2], [4, -120]);
      }
      await page.waitForTimeout(100);
      expect(JSON.stringify(await kept(page))).toBe(before);
    });

  test('a sideways swipe turns the box, a tap takes a part, and a vertical swipe scrolls', async ({
    page,
  }) => {
    await open(page, 'my-box/#walls');
    const devtools = await page.context().newCDPSession(page);
    const box = (await drawing(page).boundingBox())!;
    const middle = [box.x + box.width / 2, box.y + box.height / 2] as const;
    const before = await pathOf(page);
    await swipe(devtools, middle, [60, 0]);
    await expect.poll(() => pathOf(page)).not.toBe(before);
    await expect(heading(page)).toHaveText('Walls');
    await swipe(devtools, middle, [0, -150]);
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(50);
    await expect(heading(page)).toHaveText('Walls');
    // A tap on a page that still runs on stops it, and takes nothing.
    let stood = -1;
    await expect
      .poll(async () => {
        const [was, is] = [stood, await page.evaluate(() => scrollY)];
        stood = is;
        return is - was;
      })
      .toBe(0);
    const now = (await drawing(page).boundingBox())!;
    await page.touchscreen.tap(now.x + now.width / 2, now.y + now.height / 2 - 10);
    await expect(heading(page)).toHaveText('Lid');
  });
});

test.describe('given directly', () => {
  test('the width of a lid, a height and an inside size are typed in, and what gives way is said', async ({
    page,
  }) => {
    await open(page, 'my-box/');
    const give = async (part: BenchPart, label: string, value: string) => {
      await takePart(page, part);
      const field = page.getByRole('textbox', { name: `${label} in millimeters` });
      await field.fill(value);
      await field.press('Enter');
      await expect(field).toHaveValue(value);
      return page.locator('.control.direct', { has: field }).getByRole('status');
    };
    // 96 mm inside and grooves of 4 mm: a lid of 100 leaves 93.2 inside, and walls of 8 make that 109.2.
    await expect(await give('lid', 'width of the lid', '100')).toContainText(
      'The outside width goes from 112\u00a0mm',
    );
    expect((await kept(page))!.wantedWidth).toBeCloseTo(93.2, 6);
    await expect(await give('walls', 'outside height', '60')).toContainText('The inside height goes from');
    expect(await kept(page)).toMatchObject({ sizeFrom: 'outside', wantedHeight: 60 });
    await expect(await give('inside', 'inside length', '160')).toContainText('The outside length goes from');
    expect(await kept(page)).toMatchObject({ sizeFrom: 'inside', wantedLength: 160 });
    // What cannot be is said beside the field.
    await takePart(page, 'lid');
    const width = page.getByRole('textbox', { name: 'width of the lid in millimeters' });
    await width.fill('900');
    await width.press('Enter');
    await expect(page.locator('.part').getByRole('alert')).toContainText('it can be');
    await expect(width).toHaveValue('900');
  });

  test('a moisture meter’s reading sets the humidity, and each says what it makes of the other', async ({
    page,
  }) => {
    await open(page, 'my-box/#air');
    const meter = page.getByRole('textbox', { name: /^or what a moisture meter reads/ });
    await expect(meter).toHaveValue('8.5');
    await meter.fill('9.2');
    await meter.press('Enter');
    const humidity = page.getByRole('textbox', { name: /^humidity today/ });
    // 9.2 % is what the published table gives for 50 % at 21 °C.
    await expect.poll(async () => Number(await humidity.inputValue())).toBeCloseTo(50, 0);
    await expect(page.locator('.control.direct')).toContainText(/Air of 50\s% brings wood to 9\.2\s%/);
    await humidity.fill('60');
    await humidity.press('Enter');
    // The table's 60 % at 21 °C.
    await expect(meter).toHaveValue('11');
    await meter.fill('35');
    await meter.press('Enter');
    await expect(page.locator('.part').getByRole('alert')).toContainText('table');
    await expect(meter).toHaveValue('35');
  });
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });
  test('the plate shows the example, and each name leads to a section with its sizes', async ({ page }) => {
    await page.goto('my-box/');
    await expect(page.getByRole('img', { name: /^The box/ })).toBeVisible();
    for (const part of benchParts) {
      const link = page
        .getByRole('navigation', { name: 'Parts of the box' })
        .getByRole('link', { name: part });
      await expect(link).toBeVisible();
      const to = await link.getAttribute('href');
      await expect(page.locator(`section${to}`)).toContainText(/\d/);
      await expect(page.locator(`section${to}`).getByRole('term').first()).toBeVisible();
    }
    for (const dead of await page.locator('main button, main summary').all()) await expect(dead).toBeHidden();
  });
});

test('on paper stand the drawing, the names with their sizes and every input', async ({ page }) => {
  await open(page, 'my-box/');
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(page.getByRole('img', { name: /^The box/ })).toBeVisible();
  await expect(page.locator('.part-names')).toContainText('7 fingers of 8\u00a0mm', { useInnerText: true });
  const box = exampleBox;
  for (const name of Object.keys(fields) as (keyof Box)[])
    if (['number', 'choice'].includes(fields[name].type) && hasInput(name, box))
      await expect(page.locator('.printed dt', { hasText: fields[name].label }).first()).toBeVisible();
  for (const gone of await page.locator('main button').all()) await expect(gone).toBeHidden();
});
