import { Injectable } from '@nestjs/common';
import type { Records } from '../database/prisma-door.ts';
import { locksOf } from './pages/locks.queries.ts';

/**
 * Keeps true which partner may see which batch when a record changes hands: entries write
 * it for the batches that they touch, and a stand, a site or a bench may change its
 * partner with no entry at all.
 *
 * Call `hold` first, in a transaction behind a lock: else an entry that is being
 * written meanwhile would still be filed under the old partner.
 */
@Injectable()
export class WhoMaySeeQueries {
  /** Until the transaction ends nobody logs in this programme. */
  async hold(records: Records, programmeId: string): Promise<void> {
    const [first, count] = locksOf(programmeId);
    await records.$executeRaw`SELECT pg_advisory_xact_lock(${first}::int, n) FROM generate_series(0, ${count}::int - 1) n`;
  }

  /** After a stand got another partner, or a donor tree another stand. */
  async standsChanged(records: Records, programmeId: string): Promise<void> {
    await records.$executeRaw`SELECT file_stand_partners(${programmeId}::uuid)`;
  }

  /** After a place got another partner, or was carried to where somebody else holds it. */
  async placeChanged(records: Records, programmeId: string, placeId: string): Promise<void> {
    await records.$executeRaw`SELECT file_holders(${programmeId}::uuid, ${placeId}::uuid)`;
  }
}
