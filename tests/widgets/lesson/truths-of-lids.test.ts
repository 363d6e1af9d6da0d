/** What the guesses of the lesson on sliding lids hold for true, against arithmetic by hand. */
import { describe, expect, test } from 'vitest';
import { pressOf, rubOf } from '../../../src/figures/lid/PressGuess.tsx';
import { differs } from '../../../src/figures/lid/StripPick.tsx';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['a-lid-that-runs']!;
const valuesOf = (id: string, system: 'mm' | 'inch' = 'mm') => valuesOfGuess(guesses![id]!, model, system);
const truth = (id: string, system: 'mm' | 'inch' = 'mm') => guesses![id]!.truth(valuesOf(id, system), system);

/** Cherry, flat-sawn: Wood Handbook, Table 13-5. At 40, 60 and 30 % its wood holds 7.7, 11.0 and 6.2 % (Table 4-2). */
const cherry = 0.00248;

describe('the guesses on sliding lids', () => {
  test('a lid fitted at 40 % needs its growth up to 60 % and 0.3 mm', () => {
    const { insideWidth, lidGrooveDepth } = valuesOf('fitted-in-dry-air');
    // The width between the groove bottoms is a little more than the lid's: a hundredth of a millimeter here.
    expect(truth('fitted-in-dry-air')).toBeCloseTo(
      (insideWidth + 2 * lidGrooveDepth) * cherry * (11.0 - 7.7) + 0.3,
      1,
    );
  });

  test('its groove holds 2 mm, or 3/32 in, and the play of the driest day', () => {
    const { lidWidth, lidPlay } = valuesOf('groove-for-a-lid');
    expect(truth('groove-for-a-lid')).toBeCloseTo(2 + lidPlay + lidWidth * cherry * (7.7 - 6.2), 1);
    const inch = valuesOf('groove-for-a-lid', 'inch');
    expect(truth('groove-for-a-lid', 'inch')).toBeCloseTo(
      (3 / 32) * 25.4 + inch.lidPlay + inch.lidWidth * cherry * (7.7 - 6.2),
      1,
    );
  });

  test('pulled at 45 mm, a lid held over 46 mm presses about as hard as it is pulled, and rubs with 0.92 of that', () => {
    const v = valuesOf('side-press');
    // (80 + 8 + 4)/2 = 46 mm held. With no play 10 · 45 / 46 = 9.8 N; play shortens the lever.
    expect(v.lidHeldHalfOpen).toBeCloseTo(46, 9);
    const lever = Math.sqrt(46 ** 2 - ((v.lidWidth + v.lidPlay) ** 2 - v.lidWidth ** 2));
    expect(pressOf(v)).toBeCloseTo(450 / lever, 6);
    expect(pressOf(v)).toBeGreaterThan(9.8);
    expect(rubOf(v)).toBeCloseTo(0.92 * pressOf(v), 9);
  });

  test.each(['mm', 'inch'] as const)(
    'glued in its middle third a strip has a third to bridge (%s)',
    (system) => {
      expect(truth('strip-glued', system)).toBe('middle');
      const v = valuesOf('strip-glued', system);
      expect(differs(v, 'whole')).toBeCloseTo((v.lidWidth * cherry * (11.0 - 7.7)) / 2, 1);
      expect(differs(v, 'middle') * 3).toBeCloseTo(differs(v, 'whole'), 9);
      expect(differs(v, 'ends')).toBeCloseTo(differs(v, 'whole'), 9);
    },
  );
});

describe('the guesses on lids that come off', () => {
  const other = lessons['lift-off-and-hinged-lids']!;
  const of = (id: string, system: 'mm' | 'inch') => {
    const spec = other.guesses![id]!;
    return spec.truth(valuesOfGuess(spec, other.model, system), system);
  };

  test('six coats of 0.03 mm leave 0.12 of 0.3 mm, and 0.005 of 0.012 in', () => {
    expect(of('room-after-finish', 'mm')).toBeCloseTo(0.12, 9);
    expect(Number(of('room-after-finish', 'inch')) / 25.4).toBeCloseTo(0.005, 3);
  });

  test('0.2 mm too deep open a front 112.5 mm from the pin by 9 mm', () => {
    // Small angles: 112.5 · 0.2 / 2.5.
    expect(of('spring-open', 'mm')).toBeCloseTo(9, 1);
  });
});
