import { Injectable } from '@nestjs/common';
import { placePath, plainSpelling, type PlaceKind, type SheetFact } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { contentId } from '../entry/entry.module.ts';
import type { KnownNames } from './known.queries.ts';

interface NewPlace { id: string; parent_id: string | null; kind: PlaceKind; name: string; walk_order: number }

/** Stands, species, donor trees, recipes and places that a sheet names and the programme has not. */
@Injectable()
export class SheetRecords {
  /** Writes what is missing and puts it into `known`, so that every name in `facts` has an id afterwards. */
  async writeMissing(sql: UnitOfWork, programmeId: string, facts: readonly SheetFact[], known: KnownNames): Promise<void> {
    await this.#named(sql, programmeId, 'taxon', 'scientific_name', facts.map(({ species }) => species), known.taxa);
    await this.#named(sql, programmeId, 'stand', 'name', facts.map(({ stand }) => stand), known.stands);
    await this.#donors(sql, programmeId, facts, known);
    await this.#recipes(sql, programmeId, facts, known);
    await this.#places(sql, programmeId, facts, known);
  }

  async #named(sql: UnitOfWork, programmeId: string, table: 'taxon' | 'stand', column: string, names: readonly (string | undefined)[], known: Map<string, string>) {
    const missing: { id: string; name: string }[] = [];
    for (const name of names) {
      if (name === undefined || known.has(plainSpelling(name))) continue;
      const id = contentId(programmeId, table, plainSpelling(name));
      known.set(plainSpelling(name), id);
      missing.push({ id, name });
    }
    if (missing.length === 0) return;
    await sql.rows(
      `INSERT INTO ${table} (programme_id, id, ${column}) SELECT $1, id, name FROM jsonb_to_recordset($2::jsonb) AS new (id uuid, name text)`,
      [programmeId, JSON.stringify(missing)],
    );
  }

  async #donors(sql: UnitOfWork, programmeId: string, facts: readonly SheetFact[], known: KnownNames): Promise<void> {
    const missing: { id: string; label: string; stand_id: string | undefined; taxon_id: string | undefined }[] = [];
    for (const { donor, stand, species } of facts) {
      if (!donor || !stand || !species || known.donors.has(plainSpelling(donor))) continue;
      const id = contentId(programmeId, 'donor_tree', plainSpelling(donor));
      known.donors.set(plainSpelling(donor), { id, stand, species });
      missing.push({ id, label: donor, stand_id: known.stands.get(plainSpelling(stand)), taxon_id: known.taxa.get(plainSpelling(species)) });
    }
    if (missing.length === 0) return;
    await sql.rows(
      `INSERT INTO donor_tree (programme_id, id, label, stand_id, taxon_id)
       SELECT $1, id, label, stand_id, taxon_id FROM jsonb_to_recordset($2::jsonb) AS new (id uuid, label text, stand_id uuid, taxon_id uuid)`,
      [programmeId, JSON.stringify(missing)],
    );
  }

  async #recipes(sql: UnitOfWork, programmeId: string, facts: readonly SheetFact[], known: KnownNames): Promise<void> {
    const missing: { recipe_id: string; id: string; name: string; ppm: number | null; medium: string | null; made_on: string }[] = [];
    for (const { recipe, day } of facts) {
      if (!recipe || known.recipes.has(plainSpelling(recipe))) continue;
      const id = contentId(programmeId, 'recipe_version', plainSpelling(recipe), 1);
      known.recipes.set(plainSpelling(recipe), id);
      missing.push({ recipe_id: contentId(programmeId, 'recipe', plainSpelling(recipe)), id, name: recipe, ...partsOfRecipe(recipe), made_on: day });
    }
    if (missing.length === 0) return;
    await sql.rows(
      `WITH new AS (SELECT * FROM jsonb_to_recordset($2::jsonb) AS new (recipe_id uuid, id uuid, name text, ppm int, medium text, made_on date)),
            recipes AS (INSERT INTO recipe (programme_id, id, name) SELECT $1, recipe_id, name FROM new RETURNING id)
       INSERT INTO recipe_version (programme_id, id, recipe_id, version, hormone, hormone_ppm, medium, made_on)
       SELECT $1, new.id, recipe_id, 1, CASE WHEN ppm > 0 THEN 'IBA' END, ppm, medium, made_on FROM new JOIN recipes ON recipes.id = recipe_id`,
      [programmeId, JSON.stringify(missing)],
    );
  }

  async #places(sql: UnitOfWork, programmeId: string, facts: readonly SheetFact[], known: KnownNames): Promise<void> {
    const missing: NewPlace[] = [];
    for (const { place, act } of facts) if (place) addPath(place, act === 'planted' ? 'site' : 'ground', programmeId, known, missing);
    if (missing.length === 0) return;
    // Outermost first: a place must lie in one that is there.
    await sql.rows(
      `WITH new AS (SELECT * FROM jsonb_to_recordset($2::jsonb) AS new (id uuid, parent_id uuid, kind text, name text, walk_order int)),
            places AS (INSERT INTO place (programme_id, id, parent_id, kind, name, walk_order) SELECT $1, id, parent_id, kind, name, walk_order FROM new RETURNING id, kind)
       INSERT INTO site (programme_id, place_id) SELECT $1, id FROM places WHERE kind = 'site'`,
      [programmeId, JSON.stringify(missing)],
    );
  }
}

function addPath(cell: string, innermost: PlaceKind, programmeId: string, known: KnownNames, missing: NewPlace[]): void {
  let parent: string | null = null;
  let path = '';
  for (const { name, kind } of placePath(cell, innermost)) {
    path = path === '' ? plainSpelling(name) : `${path}/${plainSpelling(name)}`;
    const there = known.places.get(path);
    const id: string = there ?? contentId(programmeId, 'place', path);
    if (!there) {
      known.places.set(path, id);
      missing.push({ id, parent_id: parent, kind, name, walk_order: Number(/\d+/.exec(name)?.[0] ?? 0) });
    }
    parent = id;
  }
}

/** The key under which `known.places` holds the place that a cell names. */
export const placeKey = (cell: string): string => placePath(cell).map(({ name }) => plainSpelling(name)).join('/');

/** Strength and medium of recipes written as `IBA 8000 ppm, sand:peat 1:1`; what does not read so stays in the name. */
function partsOfRecipe(recipe: string): { ppm: number | null; medium: string | null } {
  const ppm = /\bIBA\s+(\d{2,5})\s*ppm\b/i.exec(recipe)?.[1];
  const medium = /,\s*(.+)$/.exec(recipe)?.[1];
  return { ppm: ppm ? Number(ppm) : /^no hormone\b/i.test(recipe) ? 0 : null, medium: medium ?? null };
}
