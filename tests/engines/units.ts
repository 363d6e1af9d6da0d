/** A reader chooses units, in the header of any page. */
import { expect } from '@playwright/test';
import type { Hand } from './hand.ts';

export async function chooseUnits(hand: Hand, system: 'mm' | 'inch'): Promise<void> {
  const fold = { css: 'details.my-ruler' } as const;
  await hand.click({ css: 'summary', in: fold });
  await hand.click({ role: 'radio', name: system === 'mm' ? '0.5 mm' : '1/32 in', in: fold });
  await expect.poll(() => hand.attribute({ css: 'html' }, 'data-units')).toBe(system);
}
