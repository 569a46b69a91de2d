import type pg from 'pg';
import type { Size } from './fill-programme.ts';
import { idAt } from './ids.ts';

/** Ten stickings a tray over the years, twenty-five trays a bench, ten benches a house; a site for every five hundred stickings. */
export function placesOf({ stickings }: Size) {
  const trays = Math.ceil(stickings / 10);
  const benches = Math.ceil(trays / 25);
  return { trays, benches, houses: Math.ceil(benches / 10), sites: Math.ceil(stickings / 500) };
}

/** Where the numbers of each kind of place begin. */
export const FIRST = { house: 0, bench: 1_000_000, tray: 2_000_000, site: 3_000_000, plot: 4_000_000 } as const;

/** Trees, trips, and everything that plants stand in. */
export async function fillSources(sql: pg.Client, programmeId: string, size: Size): Promise<void> {
  const { stands, donors, stickings } = size;
  const { trays, benches, houses, sites } = placesOf(size);
  const each = (n: number): string => `generate_series(0, ${n - 1}) n`;
  const run = (text: string): Promise<unknown> => sql.query(text, [programmeId]);
  await run(`INSERT INTO taxon (programme_id, id, scientific_name, common_name)
    SELECT $1::uuid, ${idAt('taxon', 'n')}, (ARRAY['Juniperus communis', 'Taxus baccata'])[n + 1], (ARRAY['Juniper', 'Yew'])[n + 1] FROM ${each(2)}`);
  await run(`INSERT INTO stand (programme_id, id, name) SELECT $1::uuid, ${idAt('stand', 'n')}, 'Stand ' || n FROM ${each(stands)}`);
  await run(`INSERT INTO donor_tree (programme_id, id, label, stand_id, taxon_id)
    SELECT $1::uuid, ${idAt('donor', 'n')}, 'D' || n, ${idAt('stand', `n % ${stands}`)}, ${idAt('taxon', `(n % ${stands}) % 2`)} FROM ${each(donors)}`);
  await run(`INSERT INTO trip (programme_id, id, went_on, stand_id)
    SELECT $1::uuid, ${idAt('trip', 'n')}, current_date - 100 - n % 2200, ${idAt('stand', `n % ${stands}`)} FROM ${each(stands * 10)}`);
  await run(`INSERT INTO bundle (programme_id, id, trip_id, donor_tree_id, cuttings)
    SELECT $1::uuid, ${idAt('bundle', 'n')}, ${idAt('trip', `n % ${stands * 10}`)}, ${idAt('donor', `n % ${donors}`)}, 20 FROM ${each(stickings)}`);
  const places = (kind: keyof typeof FIRST, n: number, parent: string): Promise<unknown> =>
    run(`INSERT INTO place (programme_id, id, parent_id, kind, name, walk_order) SELECT $1::uuid, ${idAt('place', `${FIRST[kind]} + n`)}, ${parent}, '${kind}', '${kind} ' || n, n FROM ${each(n)}`);
  await places('house', houses, 'NULL');
  await places('bench', benches, idAt('place', `${FIRST.house} + n / 10`));
  await places('tray', trays, idAt('place', `${FIRST.bench} + n / 25`));
  await places('site', sites, 'NULL');
  await places('plot', sites * 10, idAt('place', `${FIRST.site} + n / 10`));
  await run(`INSERT INTO site (programme_id, place_id) SELECT $1::uuid, ${idAt('place', `${FIRST.site} + n`)} FROM ${each(sites)}`);
  // Filled anew each year; a lot of medium fills a hundred trays.
  await run(`INSERT INTO tray_filling (programme_id, id, place_id, filled_on, medium, medium_lot)
    SELECT $1::uuid, ${idAt('filling', 'n')}, ${idAt('place', `${FIRST.tray} + n % ${trays}`)}, current_date - 2400 + 365 * (n / ${trays}), 'perlite and bark', 'Lot ' || n / 100 FROM ${each(trays * 7)}`);
}
