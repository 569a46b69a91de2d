import { Injectable } from '@nestjs/common';
import type { ExactPlace } from '@sprigline/contract';
import { randomUUID } from 'node:crypto';
import type { Records } from '../database/prisma-door.ts';

/** Whose place it is. */
export type PlaceOf = { readonly donorTreeId: string } | { readonly standId: string };

const SHOWN = { latitude: true, longitude: true, uncertaintyM: true, elevationM: true, directions: true } as const;

/** Exact places, which the database shows only to the grant, or to the house at work. */
@Injectable()
export class ExactPlaceQueries {
  async find(records: Records, programmeId: string, of: PlaceOf): Promise<ExactPlace | undefined> {
    const row = await records.exactPlace.findFirst({ where: { programmeId, ...of }, select: SHOWN });
    return row ? { ...row, latitude: row.latitude.toNumber(), longitude: row.longitude.toNumber() } : undefined;
  }

  /** @param sealedHash of the sealed place that it was told by */
  async file(records: Records, programmeId: string, of: PlaceOf, place: ExactPlace, sealedHash: Uint8Array<ArrayBuffer> | null = null): Promise<void> {
    await records.exactPlace.create({ data: { programmeId, id: randomUUID(), ...of, ...place, sealedHash } });
  }

  /** By which sealed place it was told; nothing where no place is told at all. */
  async toldBy(records: Records, programmeId: string, of: PlaceOf): Promise<{ sealedHash: Uint8Array | null } | undefined> {
    return (await records.exactPlace.findFirst({ where: { programmeId, ...of }, select: { sealedHash: true } })) ?? undefined;
  }

  async rewrite(records: Records, programmeId: string, of: PlaceOf, place: ExactPlace): Promise<void> {
    await records.exactPlace.updateMany({ where: { programmeId, ...of }, data: place });
  }
}
