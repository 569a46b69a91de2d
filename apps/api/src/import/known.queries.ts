import { Injectable } from '@nestjs/common';
import { labelOf, plainSpelling, type EarlierRow, type KnownToProgramme, type SheetFact, type Stage } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';

/** Ids of what the programme has already, by plain names. */
export interface KnownNames {
  readonly stands: Map<string, string>;
  readonly taxa: Map<string, string>;
  readonly donors: Map<string, { id: string; stand: string; species: string }>;
  /** By path of plain names, joined with `/`. */
  readonly places: Map<string, string>;
  /** Latest version of each recipe. */
  readonly recipes: Map<string, string>;
  readonly batches: Map<string, { id: string; stage: Stage; sticking: string }>;
}

/** What stands in the programme's books and lists before a sheet is written. */
@Injectable()
export class KnownQueries {
  async names(sql: UnitOfWork): Promise<KnownNames> {
    const named = await sql.rows<{ kind: string; name: string; id: string; parent: string | null }>(`
      SELECT 'stand' AS kind, name, id, NULL::text AS parent FROM stand
      UNION ALL SELECT 'taxon', scientific_name, id, NULL FROM taxon
      UNION ALL SELECT 'place', name, id, parent_id::text FROM place WHERE closed_on IS NULL
      UNION ALL SELECT 'recipe', r.name, v.id, NULL FROM recipe r
        JOIN LATERAL (SELECT id FROM recipe_version v WHERE v.programme_id = r.programme_id AND v.recipe_id = r.id ORDER BY version DESC LIMIT 1) v ON true
    `);
    const by = (kind: string) => new Map(named.filter((row) => row.kind === kind).map(({ name, id }) => [plainSpelling(name), id]));
    return {
      stands: by('stand'), taxa: by('taxon'), recipes: by('recipe'),
      places: pathsOf(named.filter((row) => row.kind === 'place')),
      donors: await this.#donors(sql),
      batches: await this.#batches(sql),
    };
  }

  async #donors(sql: UnitOfWork): Promise<KnownNames['donors']> {
    const rows = await sql.rows<{ label: string; id: string; stand: string; species: string }>(`
      SELECT d.label, d.id, s.name AS stand, t.scientific_name AS species
      FROM donor_tree d
      JOIN stand s ON s.programme_id = d.programme_id AND s.id = d.stand_id
      JOIN taxon t ON t.programme_id = d.programme_id AND t.id = d.taxon_id
    `);
    return new Map(rows.map(({ label, ...donor }) => [plainSpelling(label), donor]));
  }

  async #batches(sql: UnitOfWork): Promise<KnownNames['batches']> {
    const rows = await sql.rows<{ code: string; id: string; stage: Stage; sticking: string }>(`
      SELECT l.code, b.id, b.stage, coalesce(b.sticking_id, b.id)::text AS sticking
      FROM label l JOIN batch b ON b.programme_id = l.programme_id AND b.id = l.batch_id
    `);
    return new Map(rows.map(({ code, ...batch }) => [labelOf(code), batch]));
  }

  /** What earlier sheets said, row by row. */
  async earlierRows(sql: UnitOfWork): Promise<EarlierRow[]> {
    const rows = await sql.rows<{ entry_id: string; fact: Omit<SheetFact, 'row'> }>('SELECT entry_id, fact FROM import_row ORDER BY import_id, row_number');
    return rows.map(({ entry_id, fact }) => ({ entryId: entry_id, fact }));
  }
}

/** The shape in which the check of a sheet wants to know it. */
export const knownToCheck = (known: KnownNames): KnownToProgramme => ({
  batches: known.batches,
  donors: known.donors,
});

function pathsOf(places: readonly { name: string; id: string; parent: string | null }[]): Map<string, string> {
  const byId = new Map(places.map((place) => [place.id, place]));
  const pathOf = (place: { name: string; parent: string | null }): string => {
    const parent = place.parent === null ? undefined : byId.get(place.parent);
    return parent ? `${pathOf(parent)}/${plainSpelling(place.name)}` : plainSpelling(place.name);
  };
  return new Map(places.map((place) => [pathOf(place), place.id]));
}
