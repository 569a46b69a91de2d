import { Injectable } from '@nestjs/common';
import { type Cell, cellHalfDiagonalM, generalisedPosition, strictestSensitivity } from '@sprigline/domain';
import type { Prisma } from '../database/generated/client.ts';
import type { Records } from '../database/prisma-door.ts';

/** A tree or a stand with a place as measured, and all classes that ask to hide it. */
interface Measured {
  readonly table: 'donor_tree' | 'stand';
  readonly id: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly classes: number[];
}

/** The columns of a cell, in stands, donor trees and sites alike. */
interface CellColumns {
  readonly cellLatitude: Prisma.Decimal | null;
  readonly cellLongitude: Prisma.Decimal | null;
  readonly cellDegrees: Prisma.Decimal | null;
}

/** The cell as answered; null while no place is told, or while it is withheld. */
export function cellOf({ cellLatitude, cellLongitude, cellDegrees }: CellColumns): Cell | null {
  if (cellLatitude === null || cellLongitude === null || cellDegrees === null) return null;
  const [latitude, degrees] = [cellLatitude.toNumber(), cellDegrees.toNumber()];
  return { latitude, longitude: cellLongitude.toNumber(), degrees, halfDiagonalM: Math.round(cellHalfDiagonalM(latitude, degrees)) };
}

@Injectable()
export class CellQueries {
  /** Stands where at least one donor tree is of this taxon. */
  async standsWith(records: Records, programmeId: string, taxonId: string): Promise<string[]> {
    const rows = await records.donorTree.findMany({ where: { programmeId, taxonId }, select: { standId: true }, distinct: ['standId'] });
    return rows.map(({ standId }) => standId);
  }

  /**
   * Cuts the cells of stands and of all trees in them anew, each once from its place as stored.
   * A stand is as hidden as the most hidden kind of tree in it: else it would give the trees away.
   *
   * Reads exact places: only within a unit of work of the house.
   */
  async cutAgain(records: Records, programmeId: string, standIds: readonly string[]): Promise<void> {
    const measured = await records.$queryRaw<Measured[]>`
      SELECT 'donor_tree' AS table, t.id, p.latitude::float8, p.longitude::float8, ARRAY[x.sensitivity, s.sensitivity]::int[] AS classes
      FROM exact_place p
      JOIN donor_tree t ON t.programme_id = p.programme_id AND t.id = p.donor_tree_id
      JOIN taxon x ON x.programme_id = t.programme_id AND x.id = t.taxon_id
      JOIN stand s ON s.programme_id = t.programme_id AND s.id = t.stand_id
      WHERE p.programme_id = ${programmeId}::uuid AND t.stand_id = ANY (${standIds}::uuid[])
      UNION ALL
      SELECT 'stand', s.id, p.latitude::float8, p.longitude::float8, s.sensitivity || ARRAY(
        SELECT DISTINCT x.sensitivity FROM donor_tree t JOIN taxon x ON x.programme_id = t.programme_id AND x.id = t.taxon_id
        WHERE t.programme_id = s.programme_id AND t.stand_id = s.id)::int[]
      FROM exact_place p JOIN stand s ON s.programme_id = p.programme_id AND s.id = p.stand_id
      WHERE p.programme_id = ${programmeId}::uuid AND s.id = ANY (${standIds}::uuid[])`;

    if (measured.length === 0) return;
    const cells = measured.map(({ table, id, latitude, longitude, classes }) => ({
      table,
      id,
      ...generalisedPosition(latitude, longitude, strictestSensitivity(classes)),
    }));
    const text = (table: Measured['table']): string => JSON.stringify(cells.filter((cell) => cell.table === table));
    await records.$executeRaw`
      WITH cut AS (SELECT * FROM jsonb_to_recordset(${text('stand')}::jsonb) AS c (id uuid, latitude numeric, longitude numeric, degrees numeric))
      UPDATE stand s SET cell_latitude = cut.latitude, cell_longitude = cut.longitude, cell_degrees = cut.degrees
      FROM cut WHERE s.programme_id = ${programmeId}::uuid AND s.id = cut.id
        AND (s.cell_latitude, s.cell_longitude, s.cell_degrees) IS DISTINCT FROM (cut.latitude, cut.longitude, cut.degrees)`;
    await records.$executeRaw`
      WITH cut AS (SELECT * FROM jsonb_to_recordset(${text('donor_tree')}::jsonb) AS c (id uuid, latitude numeric, longitude numeric, degrees numeric))
      UPDATE donor_tree t SET cell_latitude = cut.latitude, cell_longitude = cut.longitude, cell_degrees = cut.degrees
      FROM cut WHERE t.programme_id = ${programmeId}::uuid AND t.id = cut.id
        AND (t.cell_latitude, t.cell_longitude, t.cell_degrees) IS DISTINCT FROM (cut.latitude, cut.longitude, cut.degrees)`;
  }
}
