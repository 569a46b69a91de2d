import type { EntryToSend } from '../../lib/ledger.ts';

/**
 * Entries with how far the phone's clock is from the server's: by it the books know
 * whether the minutes that the phone told mean anything.
 *
 * @param phoneNow what the phone's clock shows at sending, in milliseconds since 1970
 * @param serverNow what the server's shows when it arrives; a second on the way does no harm
 */
export const onThePhonesClock = (entries: readonly EntryToSend[], phoneNow: number, serverNow: number): EntryToSend[] =>
  entries.map((entry) => ({ ...entry, clockOffsetSeconds: Math.round((phoneNow - serverNow) / 1000) }));
