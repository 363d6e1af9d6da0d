/** How long and how hard to read each lesson, trouble, block of the course and exercise is, and the pages for a class. */
import '../virtual-woods.ts';

export default async function () {
  const { loadOf, texts } = await import('../content/reading-load.ts');
  for (const [kind, ofKind] of Object.entries(texts)) {
    console.log(kind);
    const rows: Record<string, object> = {};
    for (const [name, text] of Object.entries(ofKind)) {
      const { words, sentence, grade } = loadOf(text);
      const short = name.replace(/^.*\/(?=[^/]+\.)|\.\w+$/g, '');
      rows[short] = { words, 'words in a sentence': sentence.toFixed(1), grade: grade.toFixed(1) };
    }
    console.table(rows);
  }
}
