import fc from 'fast-check';
import { expect, test } from 'vitest';
import { incidentSpan, overlaps } from './incident-spans.ts';

const heat = { placeId: 'house', what: 'heatOff', observedOn: '2026-11-10', minute: 540 };
const seen = (day: string, answer: 'yes' | 'no' | 'notHere', more: object = {}) => ({ placeId: 'house', day, conditions: { heat: answer }, ...more });

test.each([
  ['nobody told an end, and nobody saw one', heat, [], { from: '2026-11-10', until: undefined, endSeen: false }],
  ['it may have failed from the last good day on', { ...heat, lastGoodOn: '2026-11-08' }, [], { from: '2026-11-08', until: undefined, endSeen: false }],
  ['an end that was told', { ...heat, untilDay: '2026-11-12' }, [seen('2026-11-11', 'yes')], { from: '2026-11-10', until: '2026-11-12', endSeen: false }],
  ['told afterwards, when it was over', { ...heat, lastGoodOn: '2026-11-05', untilDay: '2026-11-07' }, [], { from: '2026-11-05', until: '2026-11-07', endSeen: false }],
  ['a round saw it right again', heat, [seen('2026-11-14', 'yes'), seen('2026-11-12', 'yes'), seen('2026-11-11', 'no')], { from: '2026-11-10', until: '2026-11-12', endSeen: true }],
  ['later on the same day', heat, [seen('2026-11-10', 'yes', { minute: 600 })], { from: '2026-11-10', until: '2026-11-10', endSeen: true }],
  ['earlier on the same day says nothing', heat, [seen('2026-11-10', 'yes', { minute: 500 })], { from: '2026-11-10', until: undefined, endSeen: false }],
  ['nor the same day without a time', heat, [seen('2026-11-10', 'yes')], { from: '2026-11-10', until: undefined, endSeen: false }],
  ['another place says nothing', heat, [seen('2026-11-12', 'yes', { placeId: 'bench' })], { from: '2026-11-10', until: undefined, endSeen: false }],
  ['another tap says nothing', heat, [{ placeId: 'house', day: '2026-11-12', conditions: { lights: 'yes' as const } }], { from: '2026-11-10', until: undefined, endSeen: false }],
  ['mould is over where none is seen', { ...heat, what: 'mould' }, [{ placeId: 'house', day: '2026-11-12', conditions: { mould: 'no' as const } }], { from: '2026-11-10', until: '2026-11-12', endSeen: true }],
  ['a frost has no tap', { ...heat, what: 'frost' }, [seen('2026-11-12', 'yes')], { from: '2026-11-10', until: undefined, endSeen: false }],
] as const)('%s', (_, incident, found, span) => {
  expect(incidentSpan(incident, found)).toEqual(span);
});

test.each([
  [{ from: '2026-11-01', until: '2026-11-05' }, { from: '2026-11-05', until: '2026-11-09' }, true],
  [{ from: '2026-11-01', until: '2026-11-04' }, { from: '2026-11-05' }, false],
  [{ from: '2026-11-01' }, { from: '2026-11-05' }, true],
])('%j and %j share a day: %s', (one, other, share) => {
  expect(overlaps(one, other)).toBe(share);
  expect(overlaps(other, one)).toBe(share);
});

const day = fc.integer({ min: 1, max: 28 }).map((n) => `2026-11-${String(n).padStart(2, '0')}`);
const answer = fc.constantFrom('yes' as const, 'no' as const, 'notHere' as const);

test('a span never ends before it begins, whatever was found in whatever order', () => {
  fc.assert(
    fc.property(day, fc.option(day, { nil: undefined }), fc.option(day, { nil: undefined }), fc.array(fc.tuple(day, answer)), (observedOn, lastGoodOn, untilDay, all) => {
      const found = all.map(([when, said]) => seen(when, said));
      const span = incidentSpan({ ...heat, observedOn, lastGoodOn, untilDay }, found);
      expect(span.until === undefined || span.from <= span.until).toBe(true);
      expect(incidentSpan({ ...heat, observedOn, lastGoodOn, untilDay }, found.toReversed())).toEqual(span);
    }),
  );
});
