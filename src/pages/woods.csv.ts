/** The woods table as a file: every figure with its status and source. */
import { allWoods } from '../box/wood/all-woods.ts';
import { toCsv } from '../build/csv.ts';
import { columns } from '../widgets/woods/columns.ts';

export function GET(): Response {
  const rows = allWoods.map((wood) => ({
    wood: wood.name,
    'name in the tables': wood.tableName,
    'botanical name': wood.botanicalName ?? '',
    group: wood.group,
    'average over several species': wood.isGroup ? 'yes' : 'no',
    ...Object.fromEntries(
      columns.flatMap(({ key, unit, figure }) => {
        const found = figure(wood);
        return [
          [`${key} (${unit})`, found?.value ?? ''],
          [`${key}: status`, found?.status ?? ''],
          [`${key}: source`, found?.source ?? ''],
        ];
      }),
    ),
  }));
  return new Response(toCsv(rows), { headers: { 'content-type': 'text/csv; charset=utf-8' } });
}
