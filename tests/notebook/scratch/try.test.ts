import { test } from 'vitest';
import { said, workAll } from './core.ts';
import { relationNames, numbersOf, listOf } from '../../../src/notebook/scratch/names.ts';
import { exampleFor } from '../../../src/box/subjects/example.ts';
test('x', () => {
  const list = listOf(numbersOf(exampleFor('mm')));
  console.log(list.length, relationNames.length, list.slice(0,400).filter(x=>x.type==='number').map(x=>x.name).join(' '));
  console.log(relationNames.join(' '));
  for (const t of ['12 in * 0.00274 * 4','box.inside.width / 1.618 to in','2 3/8 in + 1/16"','70 degF to degC','box.insid.width','panelGap(1)','panelGp(1)','3 mm + 2 N','12 in * box.wood.tangential * 4','round(7.3 mm, 1/16 in)','sqrt(4 mm^2)','2 N * 3 mm','1/(2 s) ','3 kg*m/s','f(n)=n<1?1:f(n-1)+f(n-1); f(60)','f(n)=f(n+1); f(1)','5! ','1:1e12','[1,2]','"a"','45 %','a.b=3','sin(30 deg)','atan(1)','9^9^9','1 mm^0.5','sqrt(-1)','sqrt(-1 mm)','5 mm to N','12 in (3)','1,5 mm','(2 + 3','mm','3/8 to','x = 3; x*2','constructor','__proto__','box.constructor.constructor("x")()','a(b)','cos','true + 1','1 < 2','box.wall < 3 mm ? 1 : 2','1e-9 mm','2e9 mm','-5 degC to degF','5 degC + 3','1/3','100000.5 mm','0.5 lb', '20 lbf/in','{a:1}','{a:1}.a','5 apples','2 day + 3 hours', '-(3/8 in)', '3 in^2 to cm^2','1 ? 2 : 3'])
   console.log(t, ' => ', said(t));
  console.log(JSON.stringify(workAll([{type:'plot',text:'width^2',over:'width',from:'2 in',to:'12 in'}])).slice(0,400));
});
