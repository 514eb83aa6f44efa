import { describe, expect, test } from 'vitest';
import { openJob } from '../../../src/document/openJob';
import { saveJob } from '../../../src/document/saveJob';
import { jobSchema, KNOWN_KEYS } from '../../../src/document/schema';
import { bare, changed, DECK, LOFT, SLAB } from '../../fixtures/stairs';
import { asText } from './wrongFiles';

describe('saving', () => {
  test.each([LOFT, DECK, SLAB, bare('imperial', '8\' 9"')])('opening what was saved gives the same job', (job) => {
    const text = saveJob(job);
    expect(openJob(text)).toEqual({ ok: true, value: job });
    const again = openJob(text);
    expect(again.ok && saveJob(again.value)).toBe(text);
    expect(text.endsWith('}\n')).toBe(true);
  });

  test('keys stand in the order of the format, whatever order they came in', () => {
    const backwards = (value: unknown): unknown =>
      Array.isArray(value)
        ? value.map(backwards)
        : typeof value === 'object' && value !== null
          ? Object.fromEntries(
              Object.entries(value)
                .reverse()
                .map(([key, inner]) => [key, backwards(inner)]),
            )
          : value;
    const job = openJob(
      asText(
        backwards({ ...LOFT, rules: { pack: 'irc-2021', local: [{ field: 'riser.max', value: '8 in', note: 'n' }] } }),
      ),
    );
    const text = job.ok ? saveJob(job.value) : '';
    const order = [
      '"format"',
      '"version"',
      '"name": "Boathouse"',
      '"units"',
      '"rules"',
      '"field"',
      '"value"',
      '"note"',
      '"stairs"',
      '"survey"',
      '"rise"',
      '"steps"',
      '"run"',
      '"stringer"',
      '"kicker"',
    ];
    const places = order.map((key) => text.indexOf(key));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
  });

  test('a key that was taken out leaves no trace', () => {
    expect(saveJob(changed(LOFT, { survey: { floorDepth: undefined } }))).not.toContain('floorDepth');
  });
});

test('the schema knows the keys of every object of the file', () => {
  expect(Object.keys(KNOWN_KEYS)).toHaveLength(14);
  expect(jobSchema.safeParse(LOFT).success).toBe(true);
});
