import { Injectable } from '@nestjs/common';
import type { NewPermission, PageQuery, Permission, PermissionContent } from '@sprigline/contract';
import { asDate, asDateOrNull } from '../database/day.ts';
import { PrismaDoor } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import { refuseWithoutTheGrant } from '../http/grant.ts';
import type { Part } from '../http/part-of-list.ts';
import { PermissionQueries } from './permission.queries.ts';

@Injectable()
export class PermissionService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
    private readonly permissions: PermissionQueries,
  ) {}

  /** @throws DomainError `place/grant-needed` */
  async list(caller: Caller, query: PageQuery): Promise<Part<Permission>> {
    refuseWithoutTheGrant(caller);
    return this.door.inTransaction(caller, (records) => this.permissions.list(records, caller.programmeId, query));
  }

  /** @throws DomainError `place/grant-needed`, `record/unknown` */
  async one(caller: Caller, id: string): Promise<Permission> {
    refuseWithoutTheGrant(caller);
    return this.door.inTransaction(caller, (records) => this.permissions.one(records, caller.programmeId, id));
  }

  /** @throws DomainError `place/grant-needed`, `record/id-reused`, `record/no-such-stand`, `record/no-such-taxon` */
  async make(caller: Caller, permission: NewPermission): Promise<Permission> {
    refuseWithoutTheGrant(caller);
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      if (await this.trail.isNew(records, caller, 'permission', permission)) {
        await records.permission.create({ data: { programmeId, id: permission.id, ...toRow(permission) } });
        await this.permissions.nameTaxa(records, programmeId, permission.id, permission.taxonIds);
      }
      return this.permissions.one(records, programmeId, permission.id);
    });
  }

  /** @throws DomainError `place/grant-needed`, `record/unknown`, `record/no-such-stand`, `record/no-such-taxon`, `http/version-stale` */
  async change(caller: Caller, id: string, content: PermissionContent, seen: string): Promise<Permission> {
    refuseWithoutTheGrant(caller);
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const earlier = await this.permissions.one(records, programmeId, id);
      refuseIfStale(seen, earlier);
      await records.permission.update({ where: { programmeId_id: { programmeId, id } }, data: toRow(content) });
      await this.permissions.nameTaxa(records, programmeId, id, content.taxonIds);
      // Names of fields only: what a permission says stays under the grant.
      const { before: fields } = before(earlier, { ...earlier, ...content });
      await this.trail.changed(records, caller, 'permission', id, { fields: Object.keys(fields as object) });
      return this.permissions.one(records, programmeId, id);
    });
  }
}

const toRow = ({ grantedBy, land, standId, quota, validFrom, validUntil, terms, document, plantsOwedBack }: PermissionContent) => ({
  grantedBy, land, standId, quota, terms, document, plantsOwedBack,
  validFrom: asDate(validFrom),
  validUntil: asDateOrNull(validUntil),
});
