/**
 * The corner of each code: its tallest riser over its shortest run. Every rule of the code on rise and run
 * is held against it, by the code's own pack, on the corner and a hundredth past it. Figures and sections
 * are listed here by hand, beside the pack: IRC R311.7.5, IBC 1011.5.2, 29 CFR 1910.25(c), ADA 504.2, Approved
 * Document K Table 1.1, NCC Table 11.2.2a, NBC 9.8.4, DIN 18065 Table 1, D1/AS1 Table 6, AS 1657.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { PACK_LIST } from '../../src/packs/packList';
import { loadPack } from '../../src/packs/ruleBook';
import { answerOf, bare, changed } from '../fixtures/stairs';

beforeAll(async () => {
  await Promise.all(PACK_LIST.map(({ id }) => loadPack(id)));
});

const RISERS = 12;

function broken(pack: string, profile: string | null, riser: number, run: number, unit: 'in' | 'mm'): string[] {
  const rise = `${(riser * RISERS).toFixed(4)} ${unit}`;
  const { findings } = answerOf(
    changed(bare(unit === 'in' ? 'imperial' : 'metric', rise), {
      rules: { pack, ...(profile === null ? {} : { profile }) },
      survey: { lowerToAdd: '0 in', upperToAdd: '0 in' },
      steps: {
        risers: RISERS,
        run: `${run} ${unit}`,
        treadThickness: '1 in',
        nosing: unit === 'in' ? '1 in' : '25 mm',
      },
      stringer: { top: 'header-behind-riser', stockDepth: unit === 'in' ? '16 in' : '450 mm' },
    }),
  );
  return findings
    .filter(({ status, field }) => status === 'breaks' && /^(riser|tread|pitch|twoRPlusG)\./.test(field))
    .map(({ field }) => field);
}

describe('rise and run at the corner', () => {
  test.each<[string, string | null, number, number, 'in' | 'mm', string[]]>([
    ['irc-2015', null, 7.75, 10, 'in', []],
    ['irc-2018', null, 7.75, 10, 'in', []],
    ['irc-2021', null, 7.75, 10, 'in', []],
    ['irc-2024', null, 7.75, 10, 'in', []],
    ['ibc-2021', 'dwelling', 7.75, 10, 'in', []],
    ['ibc-2024', 'dwelling', 7.75, 10, 'in', []],
    ['ibc-2021', 'general', 7, 11, 'in', []],
    ['ibc-2024', 'general', 7, 11, 'in', []],
    ['osha-1910.25', null, 9.5, 9.5, 'in', []],
    ['ada-2010', null, 7, 11, 'in', []],
    // The one code here whose corner its own pitch does not allow: 45 degrees, and 42 is the most.
    ['adk-2013', 'private', 220, 220, 'mm', ['pitch.max']],
    ['adk-2013', 'utility', 190, 250, 'mm', []],
    ['adk-2013', 'general', 170, 250, 'mm', []],
    ['ncc-2022', null, 190, 240, 'mm', []],
    ['nbc-2020', 'private', 200, 255, 'mm', []],
    ['nbc-2020', 'public', 180, 280, 'mm', []],
    ['nbc-2015', 'private', 200, 255, 'mm', []],
    ['nbc-2010', 'private', 200, 210, 'mm', []],
    ['din-18065', 'private', 200, 230, 'mm', []],
    ['din-18065', 'general', 190, 260, 'mm', []],
    ['nz-d1as1', 'mainPrivate', 190, 280, 'mm', []],
    ['nz-d1as1', 'secondaryPrivate', 200, 250, 'mm', []],
    ['nz-d1as1', 'minorPrivate', 220, 220, 'mm', []],
    ['nz-d1as1', 'accessible', 180, 310, 'mm', []],
    ['as-1657', null, 225, 215, 'mm', ['pitch.max']],
  ])('%s %s: %d by %d %s', (pack, profile, riser, run, unit, past) => {
    expect(broken(pack, profile, riser, run, unit)).toEqual(past);
    const hair = unit === 'in' ? 0.01 : 0.1;
    expect(broken(pack, profile, riser + hair, run, unit)).toContain('riser.max');
    expect(broken(pack, profile, riser, run - hair, unit)).toContain('tread.min');
    expect(broken(pack, profile, riser, run, unit)).not.toContain('riser.max');
  });

  test('stairs on building sites are limited in pitch alone: 29 CFR 1926.1052(a)(2)', () => {
    expect(broken('osha-1926.1052', null, 9.5, 8, 'in')).toEqual([]);
    expect(broken('osha-1926.1052', null, 9.5, 7.9, 'in')).toEqual(['pitch.max']);
    expect(broken('osha-1926.1052', null, 5, 9, 'in')).toEqual(['pitch.min']);
  });
});

/** What a straight flight has nothing of stands in the list with its limit, and says that nobody checked it. */
describe('boundary cases of winders', () => {
  test.each([
    ['IRC R311.7.5.2.1: 10 in on the walkline', 'irc-2021', null, 'winder.minAtWalkline', 10],
    ['IRC R311.7.5.2.1: 6 in at the narrow side', 'irc-2021', null, 'winder.minNarrow', 6],
    ['IRC R311.7.5.2.1: winders alike among themselves', 'irc-2021', null, 'variation.winder.max', 0.375],
    [
      'NBC 9.8.4.6.(1): 30 or 45 degrees, and not 35',
      'nbc-2020',
      'private',
      'winder.anglePerTread',
      '30° or 45°, nothing between',
    ],
  ] as const)('%s: not checked', (_, pack, profile, field, limit) => {
    const { findings } = answerOf(
      changed(bare('imperial', '105 in'), { rules: { pack, ...(profile === null ? {} : { profile }) } }),
    );
    expect(findings.find((finding) => finding.field === field)).toMatchObject({ status: 'not-checked', limit });
  });
});
