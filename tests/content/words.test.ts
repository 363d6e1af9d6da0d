/** Each word of the trade means one thing, said in one place; lessons name words by their id. */
import { describe, expect, test } from 'vitest';
import { wordDrawings } from '../../src/prose/words/drawings.ts';
import { finderOf, namesOf } from '../../src/prose/words/glossary.ts';
import { markWords } from '../../src/prose/words/mark.ts';
import { proseOf } from '../../src/prose/words/places.ts';
import { glossary, lessons } from './content.ts';

const ids = Object.keys(glossary);

test('no two words of the glossary share a name', () => {
  const names = Object.values(glossary).flatMap((word) => namesOf(word).map((name) => name.toLowerCase()));
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
});

test('a meaning is a line: one to three short sentences', () => {
  for (const [id, { means }] of Object.entries(glossary)) {
    expect(means.length, id).toBeLessThanOrEqual(150);
    expect(means, id).toMatch(/^[A-Z].*[.)]$/);
  }
});

test('a drawing shows a word that there is', () => {
  expect(Object.keys(wordDrawings).filter((id) => !ids.includes(id))).toEqual([]);
});

test.each(lessons)('the words of the lesson $id are in the glossary', ({ data }) => {
  for (const word of data.steps.flatMap(({ words = [] }) => words)) expect(ids).toContain(word);
});

describe('uses of words', () => {
  const find = finderOf({
    groove: { term: 'groove', means: '' },
    stopped: { term: 'stopped groove', means: '' },
    'flat-sawn': { term: 'flat-sawn', means: '' },
    hold: { term: 'hold', means: '', found: [] },
  });
  const used = (text: string) => find(text).map(({ id }) => id);

  test('are whole words, in one or many, a longer phrase before a shorter one', () => {
    expect(used('Grooves, a stopped groove, and grooved walls')).toEqual(['groove', 'stopped']);
    expect(used('flat sawn and flat-sawn')).toEqual(['flat-sawn', 'flat-sawn']);
  });

  test('of a word that means other things as well are not guessed', () => {
    expect(used('Hold it while you hold the hold')).toEqual([]);
  });

  test('are looked for in the text alone, not in what tags say', () => {
    expect(proseOf('<Lab of="groove" pins={{ a: 1 }} />A <b>lip</b>.').trim()).toBe('A  lip .');
  });
});

describe('marks at the first use', () => {
  const words = { kerf: { term: 'kerf', means: '' }, lip: { term: 'lip', means: '' } };
  const mark = (html: string) => markWords(html, words, (id, text) => `[${id}:${text}]`);

  test('stand once for each word, in the order of the page', () => {
    expect(mark('<p>A lip. A kerf, a kerf.</p>')).toEqual({
      html: '<p>A [lip:lip]. A [kerf:kerf], a kerf.</p>',
      used: ['lip', 'kerf'],
    });
  });

  test('stay out of headings, links, buttons, drawings, tables and margins', () => {
    for (const html of [
      '<h2>kerf</h2>',
      '<a href="/">kerf</a>',
      '<button>kerf</button>',
      '<svg><title>kerf</title></svg>',
      '<table><tr><td>kerf</td></tr></table>',
      '<aside class="step-notes"><div>kerf</div></aside>',
      '<astro-island props="a > b"><astro-island></astro-island>kerf</astro-island>',
    ])
      expect(mark(html).used, html).toEqual([]);
  });

  test('stand in a fold only where the open text never uses the word', () => {
    expect(mark('<details><summary>x</summary>kerf, lip</details><p>kerf</p>').html).toBe(
      '<details><summary>x</summary>kerf, [lip:lip]</details><p>[kerf:kerf]</p>',
    );
  });

  test('leave the text as it was', () => {
    const html = '<p title="a > b">A kerf &amp; a lip<br>kerf</p>';
    expect(mark(html).html.replaceAll(/\[\w+:(\w+)\]/g, '$1')).toBe(html);
  });
});
