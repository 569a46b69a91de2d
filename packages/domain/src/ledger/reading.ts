import type { Count } from './fact.ts';
import type { Ledger, Reading } from './ledger.ts';
import { isStronger } from './sight.ts';

/** Takes a count as a further reading of the one just before it, or as the first of its own. */
export function readTogether(ledger: Ledger, count: Count): Omit<Reading, 'movements'> {
  const ofRoots = count.rooted === undefined ? undefined : count;
  const { day } = count;
  const earlier = openReading(ledger, day);
  if (!earlier) return { day, before: ledger, first: count, best: count, ofRoots, differ: false };

  return {
    day,
    before: earlier.before,
    first: earlier.first,
    best: better(earlier.best, count),
    ofRoots: ofRoots && earlier.ofRoots ? better(earlier.ofRoots, ofRoots) : (ofRoots ?? earlier.ofRoots),
    differ: earlier.differ || count.alive !== earlier.first.alive,
  };
}

const better = (earlier: Count, later: Count): Count => (isStronger(earlier.look, later.look) ? earlier : later);

/** The reading that a further count of that day would belong to. */
export function openReading({ reading, movements }: Ledger, day: string): Reading | undefined {
  return reading?.day === day && reading.movements === movements ? reading : undefined;
}
