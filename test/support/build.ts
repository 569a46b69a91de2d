import type {
  DonorTree, NewBundle, NewDonorTree, NewPartner, NewPermission, NewPlace, NewRecipe, NewSite, NewStand, NewTaxon, NewTrip,
  NewWorkday, Partner, Permission, Place, Recipe, Site, Stand, Taxon, Trip, Workday,
} from '@sprigline/contract';
import type { TestApi } from './api.ts';
import { newId, type SessionHeaders } from './people.ts';

/** Whatever came: a test says what it expects of it. */
type Json = ReturnType<typeof JSON.parse>;

export interface Answer<T> {
  readonly status: number;
  readonly body: T;
  readonly etag: string;
  readonly headers: Readonly<Record<string, unknown>>;
}

/** Asks the routes of one programme as one person. */
export class Asker {
  constructor(
    private readonly api: TestApi,
    private readonly who: SessionHeaders,
    private readonly programme = 'harrowdale',
  ) {}

  get = <T = Json>(path: string): Promise<Answer<T>> => this.#ask('GET', path);
  post = <T = Json>(path: string, payload: object): Promise<Answer<T>> => this.#ask('POST', path, payload);
  put = <T = Json>(path: string, payload: object, seen?: string): Promise<Answer<T>> => this.#ask('PUT', path, payload, seen);

  async #ask<T>(method: 'GET' | 'POST' | 'PUT', path: string, payload?: object, seen?: string): Promise<Answer<T>> {
    // A `Link` of a list names the whole path.
    const url = path.startsWith('/') ? path : `/api/v1/programmes/${this.programme}/${path}`;
    const headers = { ...this.who, ...(seen !== undefined && { 'if-match': seen }) };
    const answer = await this.api.app.inject({ method, url, headers, ...(payload && { payload }) });
    return { status: answer.statusCode, body: answer.json<T>(), etag: String(answer.headers['etag']), headers: answer.headers };
  }
}

/**
 * Makes records through the public door, with the parents that they lack.
 *
 *     const build = new Build(new Asker(api, await signedIn(api, 'coordinator')));
 *     const tree = await build.donorTree({ label: 'CR-1' });
 */
export class Build {
  #count = 0;

  constructor(readonly ask: Asker) {}

  taxon = (more: Partial<NewTaxon> = {}): Promise<Taxon> => this.#make('taxa', { scientificName: this.#name('Juniperus communis'), ...more });

  partner = (more: Partial<NewPartner> = {}): Promise<Partner> =>
    this.#make('partners', { name: this.#name('Thornber School'), since: '2024-01-01', ...more });

  stand = (more: Partial<NewStand> = {}): Promise<Stand> => this.#make('stands', { name: this.#name('Corran Ridge'), ...more });

  async donorTree(more: Partial<NewDonorTree> = {}): Promise<DonorTree> {
    const standId = more.standId ?? (await this.stand()).id;
    const taxonId = more.taxonId ?? (await this.taxon()).id;
    return this.#make('donor-trees', { label: this.#name('CR'), standId, taxonId, ...more });
  }

  permission = (more: Partial<NewPermission> = {}): Promise<Permission> =>
    this.#make('permissions', { grantedBy: 'The commoners of Harrowdale', land: 'Corran Ridge', validFrom: '2025-01-01', ...more });

  async trip(more: Partial<NewTrip> = {}): Promise<Trip> {
    const standId = more.standId ?? (await this.stand()).id;
    return this.#make('trips', { wentOn: '2025-10-01', standId, ...more });
  }

  /** What goes into a trip; not sent by itself. */
  bundle = (donorTreeId: string, cuttings = 20): NewBundle =>
    ({ id: newId(), donorTreeId, cuttings, heightM: 1.5, shoot: 'side', foliage: 'adult', base: 'heel', lengthCm: 12.5 });

  recipe = (more: Partial<NewRecipe> = {}): Promise<Recipe> =>
    this.#make('recipes', { name: this.#name('Heel, talc'), version: { id: newId(), hormone: 'IBA', hormonePpm: 8000, hormoneForm: 'talc', madeOn: '2025-09-01' }, ...more });

  place = (more: Partial<NewPlace> = {}): Promise<Place> => this.#make('places', { kind: 'house', name: this.#name('House'), ...more });

  /** A tray on a bench in a house. */
  async tray(more: Partial<NewPlace> = {}): Promise<Place> {
    const parentId = more.parentId ?? (await this.place({ kind: 'bench', parentId: (await this.place()).id })).id;
    return this.place({ kind: 'tray', name: this.#name('T'), rows: 10, ...more, parentId });
  }

  site = (more: Partial<NewSite> = {}): Promise<Site> => this.#make('sites', { name: this.#name('Lowmire Wood'), ...more });

  workday = (more: Partial<NewWorkday> = {}): Promise<Workday> => this.#make('workdays', { day: '2025-10-04', ...more });

  async #make<T>(path: string, content: object): Promise<T> {
    const { status, body } = await this.ask.post<T>(path, { id: newId(), ...content });
    if (status !== 201) throw new Error(`POST ${path} answered ${status}: ${JSON.stringify(body)}`);
    return body;
  }

  #name(stem: string): string {
    this.#count += 1;
    return `${stem} ${this.#count}`;
  }
}
