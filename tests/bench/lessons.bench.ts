/**
 * How long each lesson is and how hard to read: words, words in a sentence, and the grade by Flesch and Kincaid (syllables
 * by dictionary and rule). Counted is what a reader sees of the text; tags, numbers of figures and margins are left out.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';

/** The prose of a lesson: its head, tags and fold titles taken out, both native sizes counted as one. */
function proseOf(text: string): string {
  return text
    .replace(/^---[\s\S]*?\n---\n/, '')
    .replace(/<(Size|Cite)[^>]*\/>/g, 'one')
    .replace(/<[^>]*>/g, ' ')
    .replace(/^#.*$/gm, ' ')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1');
}

export default function () {
  const rows: Record<string, object> = {};
  for (const file of readdirSync('content/lessons')) {
    const prose = proseOf(readFileSync(`content/lessons/${file}`, 'utf8'));
    const words = prose.match(/[\p{L}’'-]+/gu) ?? [];
    const sentence = prose.split(/[.!?:](?:\s|$)/).filter((part) => /\p{L}/u.test(part)).length;
    const counts = {
      sentence,
      word: words.length,
      syllable: words.reduce((sum, word) => sum + syllable(word), 0),
    };
    rows[file.replace('.mdx', '')] = {
      words: counts.word,
      'words in a sentence': (counts.word / sentence).toFixed(1),
      grade: fleschKincaid(counts).toFixed(1),
    };
  }
  console.table(rows);
}
