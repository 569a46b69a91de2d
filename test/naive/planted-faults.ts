/** One slip of the pen in the source of the replay: where, what stands there, and what would stand there instead. */
export interface Fault {
  readonly slip: string;
  readonly file: string;
  readonly right: string;
  readonly wrong: string;
}

const fault = (slip: string, file: string, right: string, wrong: string): Fault => ({ slip, file, right, wrong });

const BOOKING: readonly Fault[] = [
  fault('what is taken back is subtracted', 'ledger.ts', 'BRINGS_IN.has(effect) ?', "BRINGS_IN.has(effect) && effect !== 'takenBack' ?"),
  fault('a count over the books takes nothing back', 'surplus.ts', 'left > 0 && made.missing', "code !== 'found-by-count' && left > 0 && made.missing"),
  fault('the whole loss is taken back for one plant', 'surplus.ts', 'const back = Math.min(left, loss.n)', 'const back = loss.n'),
  fault('the dead of a list are subtracted beyond the shortfall', 'book-count.ts', 'count, dead, short, look', 'count, dead, countDead(dead), look'),
  fault('taking more than is there goes unflagged', 'surplus.ts', "'took-more' : 'opening-withdrawn'", "'opening-withdrawn' : 'opening-withdrawn'"),
  fault('leaves none is not heard', 'book-fact.ts', 'return exit.leavesNone ?', 'return exit.leavesNone && false ?'),
  fault('a look from above is a strong one', 'looks.ts', "look !== 'look'", "look !== 'tug'"),
  fault('a look over with nothing to report is no look', 'looks.ts', 'saying.lookedOver === true', 'false'),
  fault('the first strong look is taken for the last', 'looks.ts', 'day > known ? day', 'day < known ? day'),
  fault('a sample sets the books', 'facts-of-batch.ts', 'sampleOf === undefined ?', "look !== undefined ?"),
  fault('a tree not found once is lost', 'book-check.ts', 'Math.min(ledger.notFound, check.notFound)', 'check.notFound'),
  fault('a hold is not heard', 'holds.ts', 'if (goesElsewhere(fact) && comesTooLate(fact, holding))', 'if (false)'),
  fault('plants held where they came to in one act have come too late', 'holds.ts', 'key.line < ofHold.line', 'key.line > ofHold.line'),
  fault('a release ends every hold', 'holds.ts', 'else holding.delete(holdId);', 'else holding.clear();'),
];

const READINGS: readonly Fault[] = [
  fault('two readings book twice', 'reading.ts', 'before: earlier.before', 'before: ledger'),
  fault('the weakest look sets the books', 'reading.ts', 'isStronger(earlier.look, later.look)', 'isStronger(later.look, earlier.look)'),
  fault('the first of two like looks sets the books', 'sight.ts', 'LOOKS.indexOf(look) > LOOKS.indexOf(than)', 'LOOKS.indexOf(look) >= LOOKS.indexOf(than)'),
  fault('readings of two days are one', 'reading.ts', 'reading?.day === day &&', 'reading !== undefined &&'),
  fault('a loss is dated by a look one weaker', 'sight.ts', 'LOOKS.indexOf(look) + 1', 'LOOKS.indexOf(look) + 2'),
  fault('a loss is dated by a look one stronger', 'sight.ts', 'LOOKS.indexOf(look) + 1', 'LOOKS.indexOf(look)'),
];

const ROOTS: readonly Fault[] = [
  fault('the tray may be called for six days only', 'loss.ts', 'TO_VERDICT = 7', 'TO_VERDICT = 6'),
  fault('the tray may be called for eight days', 'loss.ts', 'TO_VERDICT = 7', 'TO_VERDICT = 8'),
  fault('rooted plants of a called tray count as not rooted', 'loss.ts', 'rootedNow(ledger) ?? 0', '0'),
  fault('going on does not imply roots', 'rooted.ts', 'ever: Math.max(ever, gone + (rest?.n ?? 0))', 'ever'),
  fault('a fall of the rooted is believed', 'rooted.ts', 'if (everSeen < ever)', 'if (everSeen < 0)'),
  fault('who joins untold brings no roots', 'rooted.ts', 'if (rooted === undefined) return { ...ledger, roots: { goneOn, ever } };', 'if (rooted === undefined) return ledger;'),
];

const ORDER: readonly Fault[] = [
  fault('facts are ordered by their arrival', 'content-order.ts', 'day: entry.observedOn', 'day: entry.receivedOn'),
  fault('counts come before deaths', 'content-order.ts', 'dies: 1, isSeen: 2', 'dies: 2, isSeen: 1'),
  fault('lines of a workday are read upwards', 'content-order.ts', 'a.line - b.line', 'b.line - a.line'),
  fault('the minute of an unsure clock is believed', 'content-order.ts', 'entry.clockUnsure ? undefined : entry.minute', 'entry.minute'),
  fault('every day that does not add up is of unknown order', 'order-unknown.ts', '|| closesInSomeOrder(before, facts)', '|| facts.length > 0'),
  fault('tomorrow is the future', 'flag.ts', '> 1) flags.push', '> 0) flags.push'),
];

const CORRECTIONS: readonly Fault[] = [
  fault('the first correction to arrive stands', 'effective-entries.ts', 'corrections.toSorted(contentOrder)', 'corrections.toSorted((a, b) => (a.receivedOn < b.receivedOn ? -1 : 1))'),
  fault('an entry sent twice counts twice', 'effective-entries.ts', '[...new Map(entries.map((entry) => [entry.id, entry])).values()]', '[...entries]'),
  fault('an unverified author is believed', 'effective-entries.ts', 'effective: standing.filter(isVerified)', 'effective: standing'),
  fault('what is withdrawn stays', 'effective-entries.ts', "if (saying.kind === 'withdrawn') return undefined;", "if (saying.kind === 'withdrawn') return entry;"),
];

export const FAULTS: readonly Fault[] = [...BOOKING, ...READINGS, ...ROOTS, ...ORDER, ...CORRECTIONS];
