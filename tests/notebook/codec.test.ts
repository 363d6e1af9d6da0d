/** A box in a link or in the device's store may be old, damaged or hostile. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Box, exampleBox } from '../../src/box/box.ts';
import { fields } from '../../src/box/fields.ts';
import { decodeLink, decodeStore, encodeLink, encodeStore } from '../../src/notebook/codec.ts';

const size = fc.double({ min: 0.1, max: 1000, noNaN: true });
const anyItem = fc.record(
  {
    name: fc.string({ maxLength: 20 }),
    length: size,
    width: size,
    height: size,
    count: fc.integer({ min: 1, max: 99 }),
  },
  { noNullPrototype: true },
);

/** Any box whose every input lies inside its field. */
const anyBox = fc.record(
  Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [
      name,
      field.type === 'number'
        ? fc.double({ min: field.low, max: field.high, noNaN: true }).map((value) => value + 0)
        : field.type === 'choice'
          ? fc.constantFrom(...Object.keys(field.options))
          : field.type === 'items'
            ? fc.array(anyItem, { maxLength: 3 })
            : field.type === 'reasons'
              ? fc.dictionary(fc.stringMatching(/^[a-z]{1,9}(-[a-z]{1,9})?$/), fc.string({ maxLength: 50 }), {
                  noNullPrototype: true,
                })
              : fc.string({ unit: 'grapheme', maxLength: 20 }),
    ]),
  ),
) as unknown as fc.Arbitrary<Box>;

/** What anybody could write into a link: our version, then any JSON. */
const linkOf = (json: string) =>
  `1.${btoa(String.fromCharCode(...new TextEncoder().encode(json)))
    .replaceAll('+', '-')
    .replaceAll('/', '_')}`;

describe('a link', () => {
  test('gives back the box it was made from, whatever the box', () => {
    fc.assert(
      fc.property(anyBox, (box) => {
        expect(decodeLink(encodeLink(box))).toEqual({ ok: true, box });
      }),
    );
  });

  test('is short for the example, since it holds only what differs', () => {
    expect(encodeLink(exampleBox).length).toBeLessThan(10);
  });

  test('never throws and never yields a box outside the fields, whatever it holds', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json().map(linkOf), fc.string().map(linkOf)), (link) => {
        const decoded = decodeLink(link);
        if (!decoded.ok) expect(decoded.message).toMatch(/\.$/);
        else for (const name of Object.keys(decoded.box)) expect(Object.keys(fields)).toContain(name);
      }),
    );
  });

  test.each([
    ['a number outside its limits', '{"wall":1e9}', 'wall thickness'],
    ['a number written as text', '{"wall":"9.5"}', 'wall thickness'],
    ['a word that is no choice', '{"joint":"glue"}', 'corner joint'],
    ['an unknown input', '{"price":3}', 'price'],
    ['the prototype of all objects', '{"__proto__":{"wall":9}}', '__proto__'],
    ['an item without a size', '{"items":[{"name":"x","count":1}]}', 'list of contents'],
    ['markup where a rule is named', '{"accepted":{"<b>":"x"}}', 'list of exceptions'],
    ['a list instead of a box', '[1,2]', 'does not hold a box'],
    ['a name longer than the field', `{"name":"${'x'.repeat(61)}"}`, 'name'],
  ])('that holds %s is refused, and the message says what it is', (_, json, said) => {
    const decoded = decodeLink(linkOf(json));
    expect(decoded.ok).toBe(false);
    expect(decoded.ok ? '' : decoded.message).toContain(said);
  });

  test('of another version is refused as such', () => {
    const decoded = decodeLink(encodeLink(exampleBox).replace(/^1/, '7'));
    expect(decoded.ok ? '' : decoded.message).toContain('another version');
  });
});

describe('the store', () => {
  test('gives back the box it keeps', () => {
    fc.assert(
      fc.property(anyBox, (box) => {
        expect(decodeStore(encodeStore(box))).toEqual({ ok: true, box });
      }),
    );
  });

  test('refuses text that is not its own', () => {
    for (const text of ['', 'null', '[]', '{"version":2,"box":{}}', '{"version":1}', '{']) {
      expect(decodeStore(text).ok).toBe(false);
    }
  });
});
