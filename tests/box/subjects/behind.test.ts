import { expect, test } from 'vitest';
import { evaluate, wholeModel } from '../../../src/box/subjects/index.ts';
import { exampleBox as reckonedBox } from '../reckoned-box.ts';
import { inputsBehind } from '../../../src/box/subjects/behind.ts';
test('x', () => {
  const v = evaluate(reckonedBox);
  const t=performance.now();
  for (const c of wholeModel.checks) { const r = wholeModel.results[c.of as 'web']; if (r) console.log(c.id, c.of, inputsBehind(wholeModel.results, r, v, undefined, 3).join(' '), Object.keys(r.work(v).given).map((s) => s + ':' + inputsBehind(wholeModel.results, r, v, s, 2).join('/')).join(' ')); }
  console.log(performance.now()-t);
  for (const n of ['lidPlayNeeded','lidWidth','bottomGapNeeded','thinnestUsualWall'] as const) {const r=wholeModel.results[n]!; console.log(n, Object.keys(r.work(v).given).map((s) => s + ':' + inputsBehind(wholeModel.results, r, v, s, 2).join('/')).join(' '));}
});
