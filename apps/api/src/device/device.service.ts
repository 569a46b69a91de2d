import { Injectable } from '@nestjs/common';
import type { Device, TellDevice } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { TrailQueries } from '../audit/trail.queries.ts';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { devices, hear, setAside } from './device.queries.ts';

@Injectable()
export class DeviceService {
  constructor(
    private readonly database: Database,
    private readonly trail: TrailQueries,
  ) {}

  /** What the device says holds as of now, whatever it said before. */
  async hear(caller: Caller, id: string, told: TellDevice): Promise<void> {
    await this.database.inTransaction(caller, (sql) => hear(sql, caller, id, told));
  }

  /** Volunteers are told of those they were last signed in on. */
  list(caller: Caller): Promise<Device[]> {
    return this.database.inTransaction(caller, (sql) => devices(sql, caller.programmeId, caller.role === 'volunteer' ? caller.personId : undefined));
  }

  /** Done twice, the first reason stands. @throws DomainError `device/unknown` */
  async setAside(caller: Caller, id: string, reason: string): Promise<void> {
    await this.database.inTransaction(caller, async (sql) => {
      const done = await setAside(sql, caller, id, reason);
      if (!done) throw new DomainError('device/unknown', 'no phone or tablet with this id has been heard here');
      if (done.isFirst) await this.trail.note(sql, caller, { act: 'set-aside', kind: 'device', id }, { reason });
    });
  }
}
