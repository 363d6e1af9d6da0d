/** The reader's box as answers need it: each thing worked out when it is first asked for, and once. */

import type { Check, Verdict } from '../../box/core/verdict.ts';
import { type Design, designOf } from '../../box/design/design.ts';
import { type Stock, stockOf } from '../../box/stock/stock.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { evaluate, type Values, verdicts, wholeModel } from '../../box/whole/index.ts';
import { type Work, workOf } from '../../box/work/work.ts';

export interface Own {
  readonly box: Box;
  readonly values: Values;
  readonly design: Design;
  /** Undefined where there is no room between four walls. */
  readonly work: Work | undefined;
  readonly stock: Stock;
  readonly verdicts: readonly Verdict[];
}

const once = <Of>(make: () => Of) => {
  let made: { of: Of } | undefined;
  return () => {
    made ??= { of: make() };
    return made.of;
  };
};

export function ownOf(box: Box): Own {
  const values = evaluate(box);
  const design = once(() => designOf(values));
  const work = once(() => workOf(design()));
  const stock = once(() => stockOf(design()));
  const judged = once(() => verdicts(values) as readonly Verdict[]);
  return {
    box,
    values,
    get design() {
      return design();
    },
    get work() {
      return work();
    },
    get stock() {
      return stock();
    },
    get verdicts() {
      return judged();
    },
  };
}

/** The check that judges an input or a result of this box, by its name. */
export const checkOf = (name: string, values: Values): Check<Values> | undefined =>
  wholeModel.checks.find(({ of, applies }) => of === name && (applies?.(values) ?? true));
