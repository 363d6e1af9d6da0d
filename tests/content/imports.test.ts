/** The parts of the code and who may know whom: imports only go down, never round, and files stay small. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fault, files, importsOf, picture, ring, runsWith, targetOf, textOf } from './import-order.ts';

describe('imports', () => {
  test('there is code to look at', () => expect(files.length).toBeGreaterThan(10));

  test.each(files)('%s imports only from its own place and from those below', (file) => {
    const faults = importsOf(textOf(file)).flatMap((target) => {
      const reason = fault(file, target);
      return reason ? [`${target}: ${reason}`] : [];
    });
    expect(faults).toEqual([]);
  });

  test('no file imports itself through others', () => {
    const imports = new Map(
      files.map((file) => [
        file,
        runsWith(textOf(file))
          .filter((written) => written.startsWith('.'))
          .map((written) => targetOf(file, written)),
      ]),
    );
    expect(ring(imports)).toBeUndefined();
  });

  test('an import that goes up, sideways, out of its part, or brings a screen into the calculation is noticed', () => {
    expect(fault('calc/air/air.ts', '../../box/core/field.ts')).toMatch('calc may not import box');
    expect(fault('figures/movement/PanelYear.tsx', '../../notebook/current.ts')).toMatch('figures may not');
    expect(fault('widgets/kit/slider.tsx', 'd3-scale')).toMatch('d3');
    expect(fault('units/length.ts', 'preact')).toMatch('no screen');
    expect(fault('calc/core/wood.ts', '../../../tests/calc/air.test.ts')).toMatch('leaves src');
    expect(fault('box/core/field.ts', '../subjects/inputs.ts')).toMatch('goes up');
    expect(fault('box/subjects/lid/results.ts', '../index.ts')).toMatch('goes up');
    expect(fault('box/design/walls.ts', '../work/step.ts')).toMatch('goes up');
    expect(fault('widgets/kit/Control.tsx', '../my-box/PartSize.tsx')).toMatch('goes up');
    expect(fault('calc/movement/panel.ts', '../lid/run.ts')).toMatch('movement comes before lid');
    expect(fault('box/subjects/size/results.ts', '../walls/results.ts')).toMatch('size comes before walls');
  });

  test('an import that goes down is none of these', () => {
    expect(fault('box/subjects/size/results.ts', '../walls/inputs.ts')).toBeUndefined();
    expect(fault('box/subjects/lid/results.ts', '../movement/results.ts')).toBeUndefined();
    expect(fault('box/core/field.ts', '../../units/index.ts')).toBeUndefined();
    expect(fault('calc/core/wood.ts', '../../../content/data/wood.csv?raw')).toBeUndefined();
    expect(fault('pages/lessons/[id].astro', '../../layouts/Base.astro')).toBeUndefined();
  });

  test('imports are read however they are written', () => {
    const text = `import a, {\n  b,\n} from './a.ts';\nimport "./b.ts";\nawait import('./c.ts');\nexport * from './d.ts';\nimport type { E } from './e.ts';`;
    expect(importsOf(text)).toEqual(['./a.ts', './b.ts', './c.ts', './d.ts', './e.ts']);
    expect(runsWith(text)).toEqual(['./a.ts', './b.ts', './c.ts', './d.ts']);
  });

  test('a ring is found where there is one', () => {
    const straight: [string, string[]][] = [
      ['a', ['b', 'c']],
      ['b', ['c']],
      ['c', []],
    ];
    expect(ring(new Map(straight))).toBeUndefined();
    expect(ring(new Map([...straight, ['c', ['a']]]))).toEqual(['a', 'b', 'c', 'a']);
  });

  test('DEVELOPERS.md shows the picture that these rules give', () => {
    expect(readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8')).toContain(picture());
  });
});

describe('file length', () => {
  /** The first comment of a file: where a long one says why. */
  const header = (text: string) => /\/\*\*?[\s\S]*?\*\//.exec(text)?.[0] ?? '';
  const linesOf = (file: string) => textOf(file).trimEnd().split('\n').length;

  test.each(files)('%s has at most 150 lines, or says in its header why it has over 150 lines', (file) => {
    const lines = linesOf(file);
    if (lines > 150) expect(header(textOf(file)), `${lines} lines`).toMatch(/150 lines/);
  });

  test('half of the files have under 80 lines', () => {
    const sorted = files.map(linesOf).sort((a, b) => a - b);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThan(80);
  });
});
