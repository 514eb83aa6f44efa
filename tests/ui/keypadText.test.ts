import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inch, subtract } from '../../src/core/units/exact';
import { parseLength, withUnit } from '../../src/core/units/length';
import { isTextKey } from '../../src/text/say';
import { type Entry, entryOf, markIn, type PadKey, type PadUnit, press } from '../../src/ui/keypad/keypadText';

const digits = (text: string): PadKey[] => text.split('').map((digit) => ({ kind: 'digit', digit }));
const tape = (sixteenths: number): PadKey => ({ kind: 'tape', sixteenths });
const nudge = (thirtySeconds: number): PadKey => ({ kind: 'nudge', thirtySeconds });
const unit = (name: PadUnit): PadKey => ({ kind: 'unit', unit: name });
const plain = (kind: 'feet' | 'minus' | 'point' | 'half' | 'back' | 'clear'): PadKey => ({ kind });

function typed(keys: readonly PadKey[], own: PadUnit = 'in', start: Entry = entryOf('', own, true)): string {
  return keys.reduce((entry, key) => press(entry, key, own), start).text;
}

describe('keys of an inch tape', () => {
  it.each<[string, PadKey[]]>([
    ['105 7/16', [...digits('105'), tape(7)]],
    ['105 1/2', [...digits('105'), tape(7), tape(8)]],
    ['105', [...digits('105'), tape(7), tape(0)]],
    ['105 15/32', [...digits('105'), tape(7), nudge(1)]],
    ['105 3/8', [...digits('105'), tape(7), nudge(-2)]],
    ['104 31/32', [...digits('105'), nudge(-1)]],
    ['106', [...digits('105'), tape(15), nudge(2)]],
    ['5/8', [tape(10)]],
    ['105 5/8', [tape(10), ...digits('105')]],
    ['1/32', [nudge(1)]],
    ['', [nudge(-1)]],
    ["8'", [...digits('8'), plain('feet')]],
    ["8' 9 7/16", [...digits('8'), plain('feet'), ...digits('9'), tape(7)]],
    ["8' 7/16", [...digits('8'), plain('feet'), tape(7)]],
    ["7' 11 31/32", [...digits('8'), plain('feet'), nudge(-1)]],
    ["9'", [...digits('8'), plain('feet'), ...digits('11'), tape(15), nudge(2)]],
    ['8', [...digits('8'), plain('feet'), plain('feet')]],
    ['-5/8', [plain('minus'), tape(10)]],
    ['5/8', [plain('minus'), tape(10), plain('minus')]],
    ['2678 mm', [...digits('2678'), unit('mm')]],
    ['2678 mm', [unit('mm'), ...digits('2678')]],
    ['2678.5 mm', [unit('mm'), ...digits('2678'), plain('half')]],
    ['26.7 cm', [unit('cm'), ...digits('26'), plain('point'), ...digits('7')]],
    ['2678', [...digits('2678'), unit('mm'), unit('in')]],
    ['5', digits('05')],
  ])('give %s', (text, keys) => expect(typed(keys)).toBe(text));

  it.each<[string, string]>([
    ["8' 9 7/16", "8' 9"],
    ["8' 9", "8'"],
    ["8'", '8'],
    ['2678.5 mm', '2678 mm'],
    ['2678.25 mm', '2678.2 mm'],
    ['-8', '-'],
    ['-', ''],
    ['eleven', 'eleve'],
    ['', ''],
  ])('take %s back to %s', (before, after) => {
    expect(press(entryOf(before, 'in', true), plain('back'), 'in').text).toBe(after);
  });

  it('begin anew in a text that was there, or mend it', () => {
    const found = entryOf('105 7/16', 'in', true);
    expect(typed(digits('9'), 'in', found)).toBe('9');
    expect(typed([tape(10)], 'in', found)).toBe('5/8');
    expect(typed([tape(0)], 'in', found)).toBe('105');
    expect(typed([nudge(1)], 'in', found)).toBe('105 15/32');
    expect(typed([plain('clear')], 'in', found)).toBe('');
    expect(typed([unit('mm')], 'in', found)).toBe('105 7/16');
    expect(typed([unit('mm'), ...digits('26')], 'in', found)).toBe('26 mm');
    expect(typed([nudge(1), ...digits('2')], 'in', found)).toBe('1052 15/32');
  });

  it('leave alone what they could not have made, until a digit or a mark replaces it', () => {
    const found = entryOf('2.733 m', 'in', false);
    for (const key of [nudge(1), tape(0), plain('feet'), plain('minus'), plain('half')]) {
      expect(press(found, key, 'in')).toEqual(found);
    }
    expect(typed(digits('9'), 'in', found)).toBe('9');
    expect(typed([nudge(1)], 'in', entryOf('105.4375', 'in', true))).toBe('105 15/32');
    expect(typed([nudge(1)], 'in', entryOf('105.43', 'in', true))).toBe('105.43');
    expect(typed([nudge(1)], 'in', entryOf('17/16', 'in', true))).toBe('17/16');
  });

  it('point at the mark that is in the text', () => {
    expect(markIn('105 7/16', 'in')).toBe(7);
    expect(markIn('105', 'in')).toBe(0);
    expect(markIn('105 15/32', 'in')).toBeNull();
    expect(markIn('2678 mm', 'in')).toBeNull();
    expect(markIn('', 'in')).toBeNull();
  });
});

describe('keys of a metric tape', () => {
  it.each<[string, PadKey[]]>([
    ['2678', digits('2678')],
    ['2678.5', [...digits('2678'), plain('half')]],
    ['2678', [...digits('2678'), plain('half'), plain('half')]],
    ['267.8 cm', [...digits('267'), plain('point'), ...digits('8'), unit('cm')]],
    ['2678', [...digits('2678'), unit('cm'), unit('mm')]],
    ['105 7/16 in', [unit('in'), ...digits('105'), tape(7)]],
    ["8' 9 in", [unit('in'), ...digits('8'), plain('feet'), ...digits('9')]],
    ['0.5', [plain('half')]],
    ['7/16 in', [...digits('26'), tape(7)]],
  ])('give %s', (text, keys) => expect(typed(keys, 'mm')).toBe(text));
});

const anyKey: fc.Arbitrary<PadKey> = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: 0, max: 9 }).map((n): PadKey => ({ kind: 'digit', digit: String(n) })) },
  fc.integer({ min: 0, max: 15 }).map(tape),
  fc.constantFrom(-2, -1, 1, 2).map(nudge),
  fc.constantFrom<PadUnit>('in', 'mm', 'cm').map(unit),
  fc.constantFrom('feet', 'minus', 'point', 'half', 'back', 'clear').map((kind): PadKey => ({ kind })),
);
const anyText = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.constantFrom('', "8' 9 7/16", '8.10', '2.733 m', '105 7/16 in'),
);

describe('any keys', () => {
  it('give a text that reads, or one that is refused with a sentence', () => {
    const units = fc.constantFrom('imperial', 'metric');
    fc.assert(
      fc.property(fc.array(anyKey, { maxLength: 60 }), anyText, fc.boolean(), units, (keys, text, fresh, system) => {
        const own = system === 'metric' ? 'mm' : 'in';
        const outcome = typed(keys, own, entryOf(text, own, fresh));
        const full = withUnit(outcome, system, true);
        const reading = full.ok ? parseLength(full.text, true) : full;
        expect(reading.ok || isTextKey(`problem.${reading.fault}`)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('that are taken back often enough leave nothing', () => {
    fc.assert(
      fc.property(fc.array(anyKey, { maxLength: 20 }), (keys) => {
        const back = Array.from({ length: 60 }, () => plain('back'));
        expect(typed([...keys, ...back])).toBe('');
      }),
    );
  });
});

describe('a number of the tape', () => {
  it('is there exactly after its digits and at most three more taps, whatever stood in the field', () => {
    const thirtySeconds = fc.integer({ min: 1, max: 400 * 32 });
    fc.assert(
      fc.property(thirtySeconds, fc.boolean(), fc.constantFrom('', '9', '7 1/8', '12 mm'), (count, minus, before) => {
        const whole = Math.floor(count / 32);
        const rest = count % 32;
        const keys = [
          ...(whole > 0 ? digits(String(whole)) : []),
          ...(rest > 1 ? [tape(Math.floor(rest / 2))] : []),
          ...(rest % 2 === 1 ? [nudge(1)] : []),
          ...(minus ? [plain('minus')] : []),
        ];
        expect(keys.length).toBeLessThanOrEqual((whole > 0 ? String(whole).length : 0) + 3);
        // The field that holds a metric reading is one key further away.
        const start = entryOf(before, 'in', true);
        const text = typed(start.unit === 'in' ? keys : [unit('in'), ...keys], 'in', start);
        if (before !== '' && whole === 0 && rest === 1) return;
        const reading = parseLength(`${text} in`, true);
        if (!reading.ok) throw new Error(`${text}: ${reading.fault}`);
        const wanted = inch(((minus ? -1 : 1) * count) / 32);
        expect(subtract(reading.length, wanted).num).toBe(0n);
      }),
    );
  });
});
