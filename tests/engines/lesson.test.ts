/** What a reader does in a lesson, in each engine. */
import type { Hand } from './hand.ts';
import { expect, path } from './path.ts';
import { chooseUnits } from './units.ts';

const lab = { role: 'region', name: /^Inside and outside of one box/ } as const;
const wall = { role: 'textbox', name: /^wall thickness/, in: lab } as const;
const slider = { role: 'slider', name: /^wall thickness, slider/, in: lab } as const;

/** Opens a lesson with a lab, with the lab uncovered. */
async function openLab(hand: Hand) {
  await hand.open('lessons/proportion/');
  await chooseUnits(hand, 'mm');
  const skip = { role: 'button', name: 'skip, show me' } as const;
  for (let left = await hand.count(skip); left > 0; left--) await hand.click(skip);
  // A lab may stand behind a fold of its step.
  await hand.inPage(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.more-of-it')) fold.open = true;
  });
  await expect.poll(() => hand.value(wall)).toBe('8');
}

path(
  'a lesson opens from the list of lessons, with its drawing, its steps and its contents',
  async ({ hand }) => {
    await hand.open('lessons/');
    await hand.click({ css: 'main a[href$="/lessons/wood-movement/"]' });
    await expect.poll(() => hand.read({ css: 'h1' })).toBe('Wood movement');
    await expect.poll(() => hand.count({ css: 'svg.drawing' })).toBeGreaterThan(2);
    await expect.poll(() => hand.read({ css: 'nav[aria-label="In this lesson"]' })).toContain('0 of 7 done');
  },
);

path(
  'a guess is set in the figure, the truth is drawn beside it, and a reload keeps both',
  async ({ hand }) => {
    const guess = { css: '[data-guess="lid-august"]' } as const;
    await hand.open('lessons/wood-movement/');
    await chooseUnits(hand, 'mm');
    await hand.press({ role: 'slider', in: guess }, ...Array<string>(10).fill('ArrowRight'));
    await expect.poll(() => hand.count({ css: '.ghost', in: guess })).toBe(1);
    expect(await hand.count({ css: '.guess-answer', in: guess })).toBe(0);
    await hand.click({ role: 'button', name: 'Let August come', in: guess });
    await expect
      .poll(() => hand.read({ css: '.guess-answer', in: guess }))
      .toMatch(/^You said 1 mm\..*so it jams/);
    await hand.reload();
    await expect.poll(() => hand.read({ css: '.guess-answer', in: guess })).toContain('You said 1 mm.');
    expect(await hand.count({ css: '.ghost', in: guess })).toBe(1);
  },
);

path('a slider is moved: field, words and drawing follow', async ({ hand }) => {
  await openLab(hand);
  const drawn = () => hand.drawn({ css: 'svg', in: lab });
  const before = await drawn();
  await hand.press(slider, 'ArrowRight');
  await expect.poll(() => hand.attribute(slider, 'aria-valuetext')).toBe('8.5 millimeters');
  await expect.poll(() => hand.value(wall)).toBe('8.5');
  await expect.poll(drawn).not.toBe(before);
  await hand.press(slider, 'End');
  await expect.poll(() => hand.value(wall)).toBe('25');
});

path('a fraction is typed, alone and with its unit', async ({ hand }) => {
  await openLab(hand);
  await hand.type(wall, '1/2 in', 'Enter');
  // 25.4 / 2.
  await expect.poll(() => hand.value(wall)).toBe('12.7');
  await chooseUnits(hand, 'inch');
  await hand.type(wall, '3/8', 'Enter');
  await expect.poll(() => hand.attribute(slider, 'aria-valuetext')).toContain('3 eighths');
  await expect.poll(() => hand.value(wall)).toBe('3/8');
});

path('units are switched: numbers, steps and the drawing follow, and no value moves', async ({ hand }) => {
  await openLab(hand);
  await chooseUnits(hand, 'inch');
  await expect.poll(() => hand.value(wall)).toBe('5/16');
  await expect.poll(() => hand.read(lab)).toContain('5/16 in');
  await chooseUnits(hand, 'mm');
  // 8 mm is not 5/16 in: had the value moved, it would be 7.94 now.
  await expect.poll(() => hand.value(wall)).toBe('8');
  await hand.reload();
  expect(await hand.attribute({ css: 'html' }, 'data-units')).toBe('mm');
});

path('a number is asked why: its equation, what moves it, its source', async ({ hand }) => {
  await openLab(hand);
  await hand.click({ css: 'summary', name: /^inside length to width/, in: lab });
  const reason = { css: '.reason', in: lab } as const;
  await expect.poll(() => hand.read(reason)).toContain('What moves it most');
  await expect.poll(() => hand.read(reason)).toContain('Evidence: geometry');
  expect(await hand.count({ css: 'math', in: reason })).toBe(2);
});
