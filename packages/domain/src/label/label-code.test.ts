import { describe, expect, test } from 'vitest';
import { DomainError } from '../errors.ts';
import { diceOf } from '../random/dice.ts';
import { checkCharacter } from './check-character.ts';
import { isLabelCode, keptLabel, LABEL_ALPHABET, LABEL_CODE_LENGTH, looksLikeLabelCode, readLabelCode, refuseMistypedLabel, shownLabelCode } from './label-code.ts';
import { labelCodes } from './label-codes.ts';

const ALL = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*';
const codes = labelCodes(diceOf(7), 200);
const refusal = (code: string) => expect.objectContaining({ name: 'DomainError', code });

describe('checkCharacter', () => {
  // The standard's own sum for a payload and its check character: all weighted, it leaves 1. By hand:
  // '1': 1 x 2 + c = 38, so c = 36, which is '*'. 'A1': 10 x 4 + 1 x 2 + c = 75, c = 33, 'X'. 'ZZZ': 35 x (8 + 4 + 2) + c = 519, c = 29, 'T'.
  test.each([['1', '*'], ['0', '1'], ['A1', 'X'], ['ZZZ', 'T']])('of %s is %s, worked by hand', (payload, check) => {
    expect(checkCharacter(payload)).toBe(check);
  });

  // Printed as worked examples of donation numbers that use this system: ISBT 128 and texts on it; from memory.
  test.each([['G123498654321', 'H'], ['G123489654321', 'Y']])('of %s is %s, as printed', (payload, check) => {
    expect(checkCharacter(payload)).toBe(check);
  });

  test('2 is a primitive root of 37, so that 36 characters in a row all weigh differently', () => {
    const powers = Array.from({ length: 36 }, (_, at) => Number(2n ** BigInt(at) % 37n));
    expect(new Set(powers).size).toBe(36);
  });

  test.each(['', 'a1', 'A-1', '*', ' ', 'A'.repeat(36)])('is not worked out of "%s"', (payload) => {
    expect(() => checkCharacter(payload)).toThrow(refusal('label/not-a-payload'));
  });
});

describe('a code', () => {
  test('leaves 1 when all its characters are weighted and divided by 37', () => {
    for (const code of codes) {
      const sum = [...code].reduce((total, character, at) => total + ALL.indexOf(character) * 2 ** (code.length - 1 - at), 0);
      expect(sum % 37).toBe(1);
    }
  });

  test('has none of the characters that are taken for others, and is no word', () => {
    expect([...LABEL_ALPHABET].filter((character) => '01OILDQBSZGUVAE'.includes(character))).toEqual([]);
    expect(new Set(LABEL_ALPHABET).size).toBe(21);
    for (const code of codes) expect(code).toMatch(new RegExp(`^[${LABEL_ALPHABET}]{${LABEL_CODE_LENGTH}}$`));
  });

  /** What is read instead of the code, unless it is refused. */
  const misread = (code: string, typed: string): string | undefined => {
    try {
      const read = readLabelCode(typed);
      return read === code ? undefined : `${typed} for ${code}`;
    } catch (error) {
      return error instanceof DomainError && error.code === 'label/mistyped' ? undefined : `${typed}: ${error}`;
    }
  };

  test('with any one wrong character is noticed, whatever the character', () => {
    const slips = codes.flatMap((code) => [...code].flatMap((right, at) =>
      [...ALL].filter((wrong) => wrong !== right).map((wrong) => [code, code.slice(0, at) + wrong + code.slice(at + 1)] as const)));
    expect(slips).toHaveLength(codes.length * 8 * 36);
    expect(slips.filter(([, typed]) => isLabelCode(typed))).toEqual([]);
    expect(slips.flatMap(([code, typed]) => misread(code, typed) ?? [])).toEqual([]);
  });

  test('with any two characters in each other’s place is noticed, neighbours or not', () => {
    const swaps = codes.flatMap((code) => [...code].flatMap((one, at) => [...code].flatMap((other, further) => {
      if (further <= at || one === other) return [];
      return [[code, code.slice(0, at) + other + code.slice(at + 1, further) + one + code.slice(further + 1)] as const];
    })));
    expect(swaps.length).toBeGreaterThan(5000);
    expect(swaps.filter(([, typed]) => isLabelCode(typed))).toEqual([]);
    expect(swaps.flatMap(([code, typed]) => misread(code, typed) ?? [])).toEqual([]);
  });

  test('with a character too few or too many is noticed', () => {
    for (const code of codes) {
      expect(() => readLabelCode(code.slice(1))).toThrow(refusal('label/mistyped'));
      expect(() => readLabelCode(`${code}7`)).toThrow(refusal('label/mistyped'));
    }
  });
});

describe('readLabelCode', () => {
  const [code = ''] = codes;

  test.each([code.toLowerCase(), ` ${code} `, shownLabelCode(code), `${code.slice(0, 4)}-${code.slice(4)}`, [...code].join('.'), `${code.slice(0, 2)}–${code.slice(2)}`])('reads "%s"', (typed) => {
    expect(readLabelCode(typed)).toBe(code);
  });

  test('mends a letter that can only have been one digit, and the check character stands over it', () => {
    const letters: Record<string, string> = { 8: 'b', 5: 's', 2: 'Z' };
    const looked = codes.filter((each) => /[258]/.test(each));
    expect(looked.length).toBeGreaterThan(100);
    for (const each of looked) expect(readLabelCode(each.replaceAll(/[258]/g, (digit) => letters[digit] ?? ''))).toBe(each);
  });

  // G passes for 6 and for C, O for a D or a Q that no code has: nobody can tell what was meant.
  test.each(['G', 'O', '0', '1', 'l', 'I', 'U', 'V', 'A', 'E', 'D', 'Q', '*', 'Ä', '７'])('mends no %s', (letter) => {
    for (const each of codes) expect(() => readLabelCode(letter + each.slice(1))).toThrow(refusal('label/mistyped'));
  });

  test.each(['', '   ', 'A-12', 'SG07-T1', 'x'.repeat(500)])('refuses "%s"', (typed) => {
    expect(() => readLabelCode(typed)).toThrow(refusal('label/mistyped'));
  });
});

test('a label of somebody’s own is told apart from a code that was mistyped', () => {
  const [code = ''] = codes;
  const wrong = code.slice(0, -1) + (code.endsWith('2') ? '3' : '2');
  expect([code, wrong, wrong.toLowerCase(), shownLabelCode(code)].map(looksLikeLabelCode)).toEqual([true, true, true, true]);
  // Grouped otherwise, with a vowel, a nought or a one, or with two strange letters, it is of a numbering of their own.
  for (const own of ['A-12', 'SG07-T1', '', 'TRAY2345', 'D2', 'JC.23.4567', 'JC-23-4567', 'WS23 0456', 'CR23-1457', 'PLOT 234', 'LGHT 2345', 'K58Y  9J69', 'K58Y/9J69']) {
    expect(looksLikeLabelCode(own), own).toBe(false);
    expect(() => refuseMistypedLabel(own)).not.toThrow();
  }
  expect(shownLabelCode('A-12')).toBe('A-12');
  expect([shownLabelCode(code).toLowerCase(), wrong, ' a-12 '].map(keptLabel)).toEqual([code, wrong, 'a-12']);
});

test('one wrong character or two swapped ones are refused where a label may also be somebody’s own', () => {
  const few = codes.slice(0, 20);
  const slips = few.flatMap((code) => [...code].flatMap((right, at) => [...LABEL_ALPHABET, ...'DGILOQUV'].filter((wrong) => wrong !== right).map((wrong) => code.slice(0, at) + wrong + code.slice(at + 1))));
  const swaps = few.flatMap((code) => [...code.slice(1)].flatMap((other, at) => (other === code[at] ? [] : [code.slice(0, at) + other + (code[at] ?? '') + code.slice(at + 2)])));
  const passes = (typed: string): boolean => {
    try {
      refuseMistypedLabel(typed);
      return true;
    } catch {
      return false;
    }
  };
  expect(slips.length).toBe(few.length * 8 * 28);
  expect([...slips, ...swaps].flatMap((one) => [one, `${one.slice(0, 4)} ${one.slice(4)}`.toLowerCase()]).filter(passes)).toEqual([]);
  expect(codes.flatMap((code) => [code, shownLabelCode(code).toLowerCase(), ` ${code} `]).filter((typed) => !passes(typed))).toEqual([]);
});

describe('labelCodes', () => {
  test('are all different, and none that is taken', () => {
    const first = labelCodes(diceOf(1), 2000);
    const taken = new Set(first);
    const second = labelCodes(diceOf(1), 2000, taken);
    expect(new Set([...first, ...second]).size).toBe(4000);
    expect([...first, ...second].every(isLabelCode)).toBe(true);
  });

  test('use every character of the alphabet in every place', () => {
    const many = labelCodes(diceOf(3), 3000);
    for (let at = 0; at < LABEL_CODE_LENGTH; at += 1) expect(new Set(many.map((code) => code.charAt(at))).size).toBe(LABEL_ALPHABET.length);
  });

  test.each([0, -1, 2.5, Number.NaN, 100_001])('are not drawn %d at once', (n) => {
    expect(() => labelCodes(diceOf(1), n)).toThrow(refusal('label/not-a-number'));
  });

  test('that are all taken are refused, and do not go on for ever', () => {
    expect(() => labelCodes(diceOf(1), 3, { has: () => true })).toThrow(refusal('label/none-left'));
    expect(() => labelCodes(() => 0.5, 3)).toThrow(refusal('label/none-left'));
  });
});
