import { describe, expect, test } from 'vitest';
import { INCIDENT_OF_TAP, isBad, isGood, TAPS, tapOfIncident, tapsToAsk } from './taps.ts';

describe('tapsToAsk', () => {
  test.each([
    ['without a regime, everything', undefined, {}, ['lights', 'air', 'heat', 'lid', 'mould']],
    ['without a regime, not what was told not to be there', undefined, { heat: 'notHere', lights: 'yes' }, ['lights', 'air', 'lid', 'mould']],
    ['a heated house without lamps', { heatC: 18 }, {}, ['heat', 'mould']],
    ['a mist bench under lamps', { lightHours: 16, air: 'mist' }, {}, ['lights', 'air', 'mould']],
    ['a regime goes before what was told last', { cover: 'lid' }, { lid: 'notHere' }, ['lid', 'mould']],
    ['open ground, where nothing is', {}, {}, ['mould']],
  ] as const)('%s', (_, regime, last, asked) => {
    expect(tapsToAsk(regime, last)).toEqual(asked);
  });
});

test.each(TAPS)('each answer to %s is good, bad, or says nothing; never two of them', (tap) => {
  for (const answer of ['yes', 'no'] as const) expect(isGood(tap, answer)).toBe(!isBad(tap, answer));
  expect(isGood(tap, 'notHere') || isBad(tap, 'notHere')).toBe(false);
  expect(tapOfIncident(INCIDENT_OF_TAP[tap])).toBe(tap);
});

test('mould seen is bad, lights on are good', () => {
  expect(isBad('mould', 'yes')).toBe(true);
  expect(isGood('lights', 'yes')).toBe(true);
  expect(tapOfIncident('frost')).toBeUndefined();
});
