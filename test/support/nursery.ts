import type pg from 'pg';
import { asOwner, type Member, member, newId, type SessionHeaders } from './people.ts';
import type { TestApi } from './api.ts';

/** A small programme that has all an entry may name, written straight into the tables. */
export interface Nursery {
  readonly programme: string;
  readonly programmeId: string;
  readonly coordinator: Member;
  readonly volunteer: Member;
  readonly partnerId: string;
  readonly taxonId: string;
  readonly standId: string;
  /** Two donor trees of one stand, on a partner's land. */
  readonly donors: readonly [string, string];
  readonly tripId: string;
  /** A bundle of each donor tree. */
  readonly bundles: readonly [string, string];
  readonly recipeVersionId: string;
  readonly house: string;
  readonly bench: string;
  readonly trays: readonly [string, string, string];
  /** A site held by the partner, with one plot. */
  readonly site: string;
  readonly plot: string;
}

export async function nursery(api: TestApi, programme = 'harrowdale'): Promise<Nursery> {
  const coordinator = await member(api, 'coordinator', programme);
  const volunteer = await member(api, 'volunteer', programme);
  const made = await asOwner(api, (sql) => records(sql, coordinator.programmeId));
  return { programme, programmeId: coordinator.programmeId, coordinator, volunteer, ...made };
}

async function records(sql: pg.Client, programmeId: string) {
  const add = async (table: string, row: Record<string, unknown>): Promise<string> => {
    const id = newId();
    const columns = { programme_id: programmeId, ...(table === 'site' ? {} : { id }), ...row };
    const places = Object.keys(columns).map((_, index) => `$${index + 1}`);
    await sql.query(`INSERT INTO ${table} (${Object.keys(columns).join(', ')}) VALUES (${places.join(', ')})`, Object.values(columns));
    return id;
  };
  const partnerId = await add('partner', { name: 'Thornber School', since: '2024-01-01' });
  const taxonId = await add('taxon', { scientific_name: 'Juniperus communis' });
  const standId = await add('stand', { name: 'Corran Ridge', partner_id: partnerId });
  const donor = (label: string) => add('donor_tree', { label, stand_id: standId, taxon_id: taxonId });
  const donors = [await donor('CR-1'), await donor('CR-2')] as const;
  const tripId = await add('trip', { went_on: '2025-10-01', stand_id: standId });
  const bundle = (donor_tree_id: string) => add('bundle', { trip_id: tripId, donor_tree_id, cuttings: 200 });
  const bundles = [await bundle(donors[0]), await bundle(donors[1])] as const;
  const recipe_id = await add('recipe', { name: 'Heel, talc' });
  const recipeVersionId = await add('recipe_version', { recipe_id, version: 1, made_on: '2025-09-01' });
  const place = (kind: string, name: string, parent_id?: string, partner?: string) => add('place', { kind, name, parent_id, partner_id: partner });
  const house = await place('house', 'House 1');
  const bench = await place('bench', 'Bench A', house);
  const trays = [await place('tray', 'T1', bench), await place('tray', 'T2', bench), await place('tray', 'T3', bench)] as const;
  const site = await place('site', 'Lowmire Wood', undefined, partnerId);
  await add('site', { place_id: site });
  const plot = await place('plot', 'P1', site);
  return { partnerId, taxonId, standId, donors, tripId, bundles, recipeVersionId, house, bench, trays, site, plot };
}

/** What the tests of the ledger send and read. */
export class Desk {
  constructor(readonly api: TestApi, readonly nursery: Nursery, readonly headers: SessionHeaders = nursery.coordinator.headers) {}

  as(who: Member): Desk {
    return new Desk(this.api, this.nursery, who.headers);
  }

  entry(observedOn: string, saying: Record<string, unknown>, more: Record<string, unknown> = {}) {
    return { id: newId(), observedOn, writtenAt: '2026-03-01T10:00:00Z', saying, ...more };
  }

  async post(path: string, payload: object) {
    const answer = await this.api.app.inject({ method: 'POST', url: this.#url(path), headers: this.headers, payload });
    return { status: answer.statusCode, body: answer.json() };
  }

  async get(path: string) {
    const answer = await this.api.app.inject({ method: 'GET', url: this.#url(path), headers: this.headers });
    return { status: answer.statusCode, body: answer.json(), headers: answer.headers };
  }

  /** Writes entries and answers the items; anything but 200 is an error of the test. */
  async write(entries: readonly object[], options: { door?: string; confirm?: string[] } = {}) {
    const { status, body } = await this.post('entries', { entries, ...options });
    if (status !== 200) throw new Error(`POST entries answered ${status}: ${JSON.stringify(body)}`);
    return body.entries as { id: string; status: string; flags: { code: string; n?: number }[]; problem?: { type: string; status: number; facts?: object; discrepancies?: { entryId: string; there: number; n?: number }[] } }[];
  }

  /** A stuck tray: the ids of its batch and sticking. */
  async stick(n: number, more: Record<string, unknown> = {}, observedOn = '2025-10-02') {
    const [batchId, stickingId] = [newId(), newId()];
    const { bundles, trays, recipeVersionId } = this.nursery;
    const entry = this.entry(observedOn, { kind: 'stuck', batchId, stickingId, n, placeId: trays[0], bundleId: bundles[0], recipeVersionId, ...more });
    const [item] = await this.write([entry]);
    if (item?.status !== 'written') throw new Error(`sticking was ${JSON.stringify(item)}`);
    return { batchId, stickingId, entryId: entry.id };
  }

  #url(path: string): string {
    return `/api/v1/programmes/${this.nursery.programme}/${path}`;
  }
}
