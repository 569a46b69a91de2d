import { Injectable } from '@nestjs/common';
import { DonorTree, type DonorTreeContent, type DonorTreeQuery } from '@sprigline/contract';
import { asDateOrNull, dayOrNull } from '../database/day.ts';
import type { Prisma } from '../database/generated/client.ts';
import { known } from '../database/known.ts';
import type { Records } from '../database/prisma-door.ts';
import { cellOf } from '../exact-place/cell.queries.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';

const SHOWN = {
  id: true, label: true, standId: true, taxonId: true, elevationBandM: true, ageClass: true, estimatedAgeYears: true,
  sex: true, state: true, stateSeenOn: true, cloneGroupId: true, note: true,
  cellLatitude: true, cellLongitude: true, cellDegrees: true,
} as const;
type Row = Prisma.DonorTreeGetPayload<{ select: typeof SHOWN }>;

/** Donor trees as everybody in the programme may see them: with the cell, never the place. */
@Injectable()
export class DonorTreeQueries {
  /** By label, as people count, from after the last one of the part before. */
  async list(records: Records, programmeId: string, { standId, taxonId, label, after, limit }: DonorTreeQuery): Promise<Part<DonorTree>> {
    const [last] = keysAfter(after, 1) ?? [];
    const rows = await records.donorTree.findMany({
      where: {
        programmeId, ...(standId && { standId }), ...(taxonId && { taxonId }),
        AND: [...(label ? [{ label: { contains: asWritten(label), mode: 'insensitive' as const } }] : []), ...(last ? [{ label: { gt: last } }] : [])],
      },
      select: SHOWN,
      orderBy: { label: 'asc' },
      take: limit + 1,
    });
    return partOf(rows.map(toDonorTree), limit, (tree) => [tree.label]);
  }

  /** @throws DomainError `record/unknown` */
  async one(records: Records, programmeId: string, id: string): Promise<DonorTree> {
    return toDonorTree(known(await records.donorTree.findUnique({ where: { programmeId_id: { programmeId, id } }, select: SHOWN })));
  }
}

/** Signs that would stand for any others in a pattern stand for themselves. */
const asWritten = (label: string): string => label.replaceAll(/[\\%_]/g, '\\$&');

function toDonorTree({ cellLatitude, cellLongitude, cellDegrees, ...row }: Row): DonorTree {
  const tree = { ...row, stateSeenOn: dayOrNull(row.stateSeenOn), cell: cellOf({ cellLatitude, cellLongitude, cellDegrees }) };
  return DonorTree.parse(tree);
}

export const toRow = (content: DonorTreeContent) => ({ ...content, stateSeenOn: asDateOrNull(content.stateSeenOn) });
