/** What a reader does with a box of their own, in each engine. */
import { linkTo } from '../site/site.ts';
import type { Hand } from './hand.ts';
import { expect, path } from './path.ts';
import { chooseUnits } from './units.ts';

const wall = { role: 'textbox', name: /^wall thickness/ } as const;
const part = { css: '.part h2' } as const;

/** Puts the page on paper as far as a page can be asked to: what holds in print holds, what holds on the screen does not. */
const onPaper = (hand: Hand) =>
  hand.inPage(() => {
    const turn = (rules: CSSRuleList) => {
      for (const rule of rules) {
        if (rule instanceof CSSMediaRule) {
          if (/print/.test(rule.media.mediaText)) rule.media.mediaText = 'all';
          else if (/screen/.test(rule.media.mediaText)) rule.media.mediaText = 'not all';
        }
        if ('cssRules' in rule) turn((rule as CSSGroupingRule).cssRules);
      }
    };
    for (const sheet of document.styleSheets) turn(sheet.cssRules);
    dispatchEvent(new Event('beforeprint'));
  });

path('a box is designed from three questions and put on the bench', async ({ hand }) => {
  await hand.open('my-box/');
  await hand.click({ role: 'button', name: 'new box' });
  const made = { css: '.box-made' } as const;
  await expect.poll(() => hand.read(made)).toContain('It can be built');
  await hand.click({ role: 'radio', name: /2 packs of cards/ });
  await hand.click({ role: 'radio', name: /lifts off/ });
  await hand.click({ role: 'radio', name: /black walnut/ });
  const put = { role: 'button', name: 'put it on the bench', in: made } as const;
  await expect.poll(() => hand.read(made)).toContain('It can be built');
  await hand.click(put);
  await expect.poll(() => hand.count(made)).toBe(0);
  const kept = () => hand.inPage(() => localStorage.getItem('rule-and-reason.box') ?? '');
  await expect.poll(kept).toContain('Box for 2 packs of cards');
  expect(JSON.parse(await kept()).box).toMatchObject({ kind: 'lift-off', species: 'black-walnut' });
});

path('a part is taken by a press on the drawing of the box', async ({ hand }) => {
  await hand.open('my-box/#inside');
  await hand.click({ role: 'button', name: 'lid off' });
  for (const [name, title] of [
    ['corners', 'Corners'],
    ['grooves', 'Grooves'],
  ] as const) {
    await hand.clickOn({ css: `.leaders [data-part="${name}"] circle` });
    await expect.poll(() => hand.read(part)).toBe(title);
  }
});

path('what is changed stands there after a reload, and on other pages', async ({ hand }) => {
  await hand.open('my-box/#walls');
  await chooseUnits(hand, 'mm');
  await hand.type(wall, '11', 'Enter');
  await expect
    .poll(() => hand.attribute({ role: 'slider', name: /^wall thickness, slider/ }, 'aria-valuetext'))
    .toBe('11 millimeters');
  await hand.reload();
  await expect.poll(() => hand.value(wall)).toBe('11');
  await hand.open('rules/wall-thickness/');
  await expect.poll(() => hand.read({ css: '.for-my-box' })).toContain('11 mm');
});

path('a link opens its box, leaves the address, and undo brings back the box before', async ({ hand }) => {
  await hand.open('my-box/#walls');
  await chooseUnits(hand, 'mm');
  await hand.type(wall, '12', 'Enter');
  await expect
    .poll(() => hand.inPage(() => localStorage.getItem('rule-and-reason.box') ?? ''))
    .toContain('12');
  await hand.open('lessons/');
  await hand.open(`${linkTo('my-box/', { name: 'From a friend', wall: 7 })}&walls`);
  await expect.poll(() => hand.value(wall)).toBe('7');
  expect(await hand.inPage(() => location.hash)).not.toContain('box');
  expect(await hand.value({ role: 'textbox', name: /^name of this box/ })).toBe('From a friend');
  await hand.click({ role: 'button', name: /^undo/ });
  await expect.poll(() => hand.value(wall)).toBe('12');
});

path(
  'a sheet is printed: the button asks for it, and the paper has lists and a code, and no controls',
  async ({ hand }) => {
    await hand.open('build-sheet/');
    await chooseUnits(hand, 'mm');
    await hand.inPage(() => {
      window.print = () => {
        document.documentElement.dataset.printed = 'yes';
      };
    });
    await hand.click({ role: 'button', name: 'print this sheet' });
    await expect.poll(() => hand.attribute({ css: 'html' }, 'data-printed')).toBe('yes');
    await onPaper(hand);
    const sheet = { css: '.build-sheet' } as const;
    await expect.poll(() => hand.count({ css: '.qr', in: sheet })).toBe(1);
    // Boxes to tick are for the pencil.
    expect(await hand.count({ css: 'button, input:not([type=checkbox])' })).toBe(0);
    const words = await hand.read(sheet);
    expect(words).toContain('Made by');
    expect(words).toContain('28 × domino');
    expect(words).toContain('Cut list');
    expect(words).not.toMatch(/NaN|undefined/);
  },
);
