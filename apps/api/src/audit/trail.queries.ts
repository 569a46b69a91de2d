import { Inject, Injectable } from '@nestjs/common';
import { DomainError } from '@sprigline/domain';
import { createHmac, randomUUID } from 'node:crypto';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { inOrder } from '../http/etag.ts';

/** Who did it, and what brought it: a session, or a link before there is one. */
export interface Doer {
  readonly programmeId: string;
  readonly personId: string;
  readonly sessionId?: string;
}

export interface Act {
  readonly act: 'made' | 'changed' | 'removed' | 'withdrawn' | 'accepted' | 'used' | 'revoked' | 'set-aside' | 'despatched' | 'labelled';
  readonly kind: 'programme' | 'person' | 'invitation' | 'reset-link' | 'key' | 'request' | 'plan' | 'plan-target' | 'plan-share' | 'label-roll' | 'batch' | 'donor-tree' | 'place' | 'photo' | 'device';
  readonly id: string;
}

type Facts = Readonly<Record<string, unknown>>;

const INSERT = `
  INSERT INTO audit (programme_id, id, person_id, delivered_by, act, subject_kind, subject_id, facts)
  VALUES ($1, $2, $3, $4, $5, $6, $7, $8) ON CONFLICT (programme_id, id) DO NOTHING RETURNING id`;

/** Who did what to people and rights: written in the transaction of the deed itself. */
@Injectable()
export class TrailQueries {
  constructor(@Inject(SETTINGS) private readonly settings: Settings) {}

  async note(sql: UnitOfWork, doer: Doer, act: Act, facts: Facts = {}): Promise<void> {
    await sql.one(INSERT, this.#row(doer, act, randomUUID(), facts));
  }

  /**
   * Notes that something is made, under its own id, and says whether it is to be made now.
   * Of two requests at once the second waits here.
   *
   * @returns false when the same was sent under that id before
   * @throws DomainError `<refusal>` when the id stands for something else
   */
  async isNew<T extends { readonly id: string }>(sql: UnitOfWork, doer: Doer, kind: Act['kind'], sent: T, refusal: string): Promise<boolean> {
    const content = createHmac('sha256', this.settings.secret).update(`${kind}\n${inOrder(sent)}`).digest('base64url');
    if (await sql.maybe(INSERT, this.#row(doer, { act: 'made', kind, id: sent.id }, sent.id, { content }))) return true;

    const earlier = await sql.one<{ facts: Facts }>('SELECT facts FROM audit WHERE programme_id = $1 AND id = $2', [doer.programmeId, sent.id]);
    if (earlier.facts['content'] === content) return false;
    throw new DomainError(refusal, 'that id was sent before with other content: make a new id for a new thing');
  }

  #row({ programmeId, personId, sessionId }: Doer, { act, kind, id }: Act, rowId: string, facts: Facts): unknown[] {
    const deliveredBy = sessionId === undefined ? 'link' : `session ${sessionId}`;
    return [programmeId, rowId, personId, deliveredBy, `${kind}.${act}`, kind, id, JSON.stringify(facts)];
  }
}
