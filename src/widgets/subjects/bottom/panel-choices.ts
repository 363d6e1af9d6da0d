/** What the labs on the bottom's notes share: which wood, how its rings lie, and the smallest bottom they reckon. */
import { choice } from '../../../box/core/inputs.ts';
import { firstRefusal } from '../../../calc/core/refusal.ts';

export const panelChoices = {
  cut: choice(
    'rings in the bottom',
    { flat: 'lying flat (flat-sawn)', quarter: 'upright (quarter-sawn)' },
    'flat',
  ),
  wood: choice('wood', { walnut: 'walnut', cherry: 'cherry', spruce: 'Sitka spruce' }, 'walnut'),
};

/** The range in which the relations on panels hold, mm. */
export const tooSmall = (v: { insideLength: number; insideWidth: number }) =>
  firstRefusal(
    ['inside length', v.insideLength, 40, 600, ' mm'],
    ['inside width', v.insideWidth, 40, 600, ' mm'],
  );
