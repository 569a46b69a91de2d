import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cuttingsDue, type CuttingsNow } from './cuttings-due.ts';
import { dayAfter } from './day-after.ts';
import { waitingDays } from './waiting-days.ts';

const DAYS = waitingDays({ firstCheck: 42, verdict: 300, movingOn: 180 }, { firstRooted: [], firstGoneOn: [], lastGoneOn: [] });
const STUCK: CuttingsNow = { since: '2026-01-01', plants: 40, rootedNow: undefined, rootedEver: 0, strongLookOn: undefined, calledOn: undefined, held: false };
const CHECK = { kind: 'firstCheck', dueOn: '2026-02-12' };
const VERDICT = { kind: 'verdict', dueOn: '2026-10-28' };
const MOVING = { kind: 'movingOn', dueOn: '2026-06-30' };

describe('cuttingsDue', () => {
  test.each<[string, Partial<CuttingsNow>, object[]]>([
    ['just stuck', {}, [CHECK, VERDICT]],
    ['a tug a week before its day is the first check', { strongLookOn: '2026-02-05', rootedNow: 0 }, [VERDICT]],
    ['a tug eight days before is too early to be it', { strongLookOn: '2026-02-04', rootedNow: 0 }, [CHECK, VERDICT]],
    ['a tug months later closes it as well', { strongLookOn: '2026-08-01', rootedNow: 0 }, [VERDICT]],
    ['roots close the check, however early and seen how', { rootedEver: 3, rootedNow: 3 }, [MOVING, VERDICT]],
    ['held plants are not moved on', { rootedEver: 3, rootedNow: 3, held: true }, [VERDICT]],
    ['all rooted: nothing is left to call', { rootedEver: 40, rootedNow: 40 }, [MOVING]],
    ['rooted ones have gone on, the rest waits', { plants: 20, rootedEver: 20, rootedNow: 0 }, [VERDICT]],
    ['called, with two rooted left', { plants: 2, rootedEver: 12, rootedNow: 2, calledOn: '2026-11-01' }, [MOVING]],
    ['empty', { plants: 0 }, []],
  ])('%s', (_, change, due) => {
    expect(cuttingsDue({ ...STUCK, ...change }, DAYS)).toEqual(due);
  });

  test('an entry closes what it does and nothing else', () => {
    const some = fc.record({
      plants: fc.integer({ min: 1, max: 99 }), rootedNow: fc.option(fc.integer({ min: 0, max: 99 }), { nil: undefined }),
      strongLookOn: fc.option(fc.integer({ min: 0, max: 400 }).map((days) => dayAfter(STUCK.since, days)), { nil: undefined }), held: fc.boolean(),
    });
    fc.assert(
      fc.property(some, ({ plants, rootedNow, strongLookOn, held }) => {
        const rooted = rootedNow === undefined ? undefined : Math.min(rootedNow, plants);
        const batch = { ...STUCK, plants, rootedNow: rooted, rootedEver: rooted ?? 0, strongLookOn, held };
        const kinds = (now: CuttingsNow) => cuttingsDue(now, DAYS).map(({ kind }) => kind);
        const before = kinds(batch);

        expect(kinds({ ...batch, strongLookOn: '2027-01-01' })).toEqual(before.filter((kind) => kind !== 'firstCheck'));
        expect(kinds({ ...batch, calledOn: '2027-01-01' })).toEqual(before.filter((kind) => kind === 'movingOn'));
        expect(kinds({ ...batch, plants: 0, rootedNow: 0 })).toEqual([]);
      }),
    );
  });
});
