import { Inject, Injectable } from '@nestjs/common';
import { DomainError } from '@sprigline/domain';
import { createHmac } from 'node:crypto';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { type Caller, deliveredBy } from '../http/caller.ts';
import { inOrder } from '../http/etag.ts';
import type { Prisma } from './generated/client.ts';
import type { Records } from './prisma-door.ts';

/** Nouns of records, as the audit trail and the routes say them. */
export type RecordKind =
  | 'taxon' | 'stand' | 'donor-tree' | 'permission' | 'trip' | 'bundle' | 'recipe' | 'recipe-version'
  | 'place' | 'filling' | 'place-move' | 'regime' | 'site' | 'partner' | 'workday';

/** Who made and changed which record: written in the same transaction as the record itself. */
@Injectable()
export class RecordTrail {
  readonly #key: string;

  constructor(@Inject(SETTINGS) settings: Settings) {
    this.#key = settings.secret;
  }

  /**
   * Notes that a record is made, and says whether it is to be made now.
   *
   * The row about a making has the id of what was made. So the database itself says
   * whether an id was there before, and two requests at once take turns. What was
   * sent is kept as a keyed hash: enough to know it again, and no exact place can be
   * guessed from it.
   *
   * @returns false when the same content came under that id before
   * @throws DomainError `record/id-reused` when the id stands for other content
   */
  async isNew(records: Records, caller: Caller, kind: RecordKind, sent: { readonly id: string }): Promise<boolean> {
    const content = createHmac('sha256', this.#key).update(`${kind}\n${inOrder(sent)}`).digest('base64url');
    const row = { ...this.#row(caller, `${kind}.made`, kind, sent.id), id: sent.id, facts: { content } };
    const { count } = await records.audit.createMany({ data: [row], skipDuplicates: true });
    if (count === 1) return true;

    const { programmeId } = caller;
    const earlier = await records.audit.findUniqueOrThrow({ where: { programmeId_id: { programmeId, id: sent.id } } });
    if (inOrder(earlier.facts) === inOrder({ content })) return false;
    throw new DomainError('record/id-reused', 'that id was sent before with other content: make a new id for a new thing');
  }

  /** Notes a change. `facts` must hold nothing that needs the grant *see exact places*. */
  async changed(records: Records, caller: Caller, kind: RecordKind, id: string, facts: Prisma.InputJsonObject, act = 'changed'): Promise<void> {
    await records.audit.create({ data: { ...this.#row(caller, `${kind}.${act}`, kind, id), facts } });
  }

  #row(caller: Caller, act: string, subjectKind: RecordKind, subjectId: string) {
    const { programmeId, personId } = caller;
    return { programmeId, personId, deliveredBy: deliveredBy(caller), act, subjectKind, subjectId };
  }
}

/** What a change took away: the fields that differ, as they were before. */
export function before<T extends object>(earlier: T, later: object): Prisma.InputJsonObject {
  const now = later as Readonly<Record<string, unknown>>;
  return { before: Object.fromEntries(Object.entries(earlier).filter(([key, value]) => inOrder(now[key]) !== inOrder(value))) };
}
