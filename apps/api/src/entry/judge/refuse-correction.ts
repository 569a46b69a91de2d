import type { Saying as Said } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { Author } from '../author.ts';
import type { OpenPages } from '../pages/open-pages.ts';
import type { StoredEntry } from '../stored-entry.ts';

export type Correction = Extract<Said, { kind: 'withdrawn' | 'replaced' }>;

/** A volunteer may mend their own entry for this long after it reached the server. */
const MAY_MEND_FOR_MS = 24 * 60 * 60 * 1000;

/**
 * @throws DomainError `entry/kind-changed`
 * @throws DomainError `entry/not-yours` for a volunteer with somebody else's entry, or a day later
 */
export function refuseCorrection(correction: Correction, target: StoredEntry, author: Pick<Author, 'role' | 'personId'>, now: string): void {
  if (correction.kind === 'replaced' && correction.instead.saying.kind !== target.said.kind) {
    throw new DomainError('entry/kind-changed', `an entry that says ${target.said.kind} cannot come to say ${correction.instead.saying.kind}: withdraw it and write another`, {
      was: target.said.kind, asked: correction.instead.saying.kind,
    });
  }
  if (!mayMend(target, author, now)) {
    throw new DomainError('entry/not-yours', 'you can mend what you wrote yourself until a day after it arrived; ask a coordinator to do it');
  }
}

/**
 * As whom a correction is judged. On a device that several share it is who wrote it there, if
 * the device brought what is corrected, too: a claim opens nobody else's entries.
 */
export const writerOf = (correction: StoredEntry, target: StoredEntry, { role, personId }: Author): Pick<Author, 'role' | 'personId'> => ({
  role, personId: target.deliveredBy === correction.deliveredBy ? (correction.writtenBy ?? personId) : personId,
});

/** Those who answer for the stock may mend everything, others what they wrote themselves within the last day. */
export function mayMend(target: StoredEntry, { role, personId }: Pick<Author, 'role' | 'personId'>, now: string): boolean {
  if (role === 'coordinator' || role === 'owner') return true;
  return target.writtenBy === personId && Date.parse(now) - Date.parse(target.receivedAt) <= MAY_MEND_FOR_MS;
}

/**
 * At the desk, a correction of a version that has been corrected meanwhile is for its writer to look at again.
 *
 * @throws DomainError `entry/corrected-meanwhile`
 */
export function refuseStaleVersion(correction: Correction, pages: OpenPages): void {
  const others = pages.correctionsOf(correction.entryId);
  if (others.some(({ said }) => 'sawVersion' in said && said.sawVersion === correction.sawVersion)) {
    throw new DomainError('entry/corrected-meanwhile', 'look at how it stands now, then correct that');
  }
}

/** A correction that arrived before what it corrects is held to the same rule once that is there. */
export function mayCorrectOnArrival({ said, writtenBy }: StoredEntry, pages: OpenPages): boolean {
  const target = 'sawVersion' in said ? pages.entries.get(said.entryId) : undefined;
  if (!target || !('sawVersion' in said)) return true;
  const keepsKind = said.kind === 'withdrawn' || said.instead.saying.kind === target.said.kind;
  return keepsKind && (target.writtenBy === writtenBy || pages.record('person', writtenBy ?? '')?.desk === true);
}
