/** Where the work can hurt, a caution says the hazard and the safeguard, and comes from the one table where it can. */
import { describe, expect, test } from 'vitest';
import { cautionNames, cautions, isCautionName } from '../../src/box/work/cautions.ts';
import { cautionsOf, namedIn, namesInWork } from '../../src/prose/cautions.ts';
import { lessons, rules, sourceIds, troubles } from './content.ts';

const names = cautionNames.join(', ');

describe.each(cautionNames)('the caution %s', (name) => {
  const { about, hazard, safeguard, sources } = cautions[name];
  test('says what it is about, what can happen and what is done about it, and cites works there are', () => {
    expect(about.length).toBeGreaterThan(3);
    for (const sentence of [hazard, safeguard]) expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(hazard).not.toBe(safeguard);
    for (const id of sources) expect(sourceIds).toContain(id);
  });
});

test.each([...rules, ...troubles])(
  '$id says a hazard and a safeguard of its own in sentences',
  ({ data }) => {
    for (const { hazard, safeguard } of cautionsOf(data.cautions ?? []).own)
      for (const part of [hazard, safeguard]) expect(part).toMatch(/^[A-Z].*\.$/);
  },
);

/** Tags of a text, each with its attributes and what stands in it. */
const tagsIn = (body: string) =>
  [...body.matchAll(/<Caution\b([^>]*?)(?:\/>|>([\s\S]*?)<\/Caution>)/g)].map((match) => ({
    attributes: match[1]!,
    inside: (match[2] ?? '').trim(),
  }));

test.each([...lessons, ...rules])(
  '$id: a caution in the text names the table, or says its own hazard',
  ({ body }) => {
    for (const { attributes, inside } of tagsIn(body)) {
      const says = `<Caution${attributes}> ${inside.slice(0, 80)}`;
      expect(attributes, `${says}: write of="…" (${names}), or hazard="…"`).toMatch(/\b(of|hazard)="[^"]+"/);
      if (!attributes.includes('of='))
        expect(inside, `${says}: the safeguard stands between the tags`).not.toBe('');
    }
    for (const name of namedIn(body)) expect(isCautionName(name), name).toBe(true);
  },
);

test.each([...lessons, ...rules])('$id: no caution lies in a fold or behind a guess', ({ body }) => {
  for (const match of body.matchAll(/<(More|Guess)\b[\s\S]*?<\/\1>/g))
    expect(match[0]).not.toMatch(/<Caution/);
});

test('a rule’s cautions are taken apart into those of the table and its own', () => {
  const own = { hazard: 'It rolls.', safeguard: 'Clamp it.' };
  expect(cautionsOf(['dust', own])).toEqual({ named: ['dust'], own: [own] });
});

test('the work on some box names its cautions: the saw, the joint, the groove, the lid, the dust', () => {
  const found = namesInWork();
  for (const name of ['machines', 'crosscut', 'upright', 'groove', 'keys', 'sawnLid', 'dust'])
    expect([...found]).toContain(name);
  for (const name of found) expect(isCautionName(name)).toBe(true);
});
