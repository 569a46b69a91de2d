import type { ExactPlace } from '@sprigline/contract';
import { day, number, text } from '../../lib/form-values.ts';

/** What is wrong with a field; the server would say the same, but may be hours away. */
export interface Fault {
  readonly name: string;
  readonly what: 'missing' | 'noNumber' | 'notWhole' | 'outside' | 'bothOrNone' | 'tooLong' | 'inUse';
  readonly from?: number;
  readonly to?: number;
}

export interface OutingTold {
  readonly wentOn: string;
  readonly standId: string;
  readonly ledBy?: string | undefined;
  readonly people?: number | undefined;
}

export interface NewTreeTold {
  readonly label: string;
  readonly standId: string;
  readonly taxonId: string;
  readonly sex: string;
  readonly ageClass?: string | undefined;
  readonly estimatedAgeYears?: number | undefined;
  readonly state: 'standing';
  readonly stateSeenOn: string;
}

export interface BundleTold {
  readonly cuttings: number;
  readonly heightM?: number | undefined;
  readonly shoot?: string | undefined;
  readonly foliage?: string | undefined;
  readonly base?: string | undefined;
  readonly lengthCm?: number | undefined;
}

export interface TreeTold {
  /** Nothing: a new tree. */
  readonly donorTreeId: string | undefined;
  readonly tree: NewTreeTold | undefined;
  readonly bundle: BundleTold | undefined;
  readonly place: ExactPlace | undefined;
}

/** What the select says for a tree that nobody has written down before. */
export const NEW_TREE = 'new';

const LONGEST_LABEL = 200;
const LONGEST_WAY = 4_000;

/** Reads a form field by field, and gathers what is wrong. */
class Reading {
  readonly faults: Fault[] = [];
  constructor(readonly form: FormData) {}

  needed(name: string, value: string | undefined): string {
    if (value === undefined) this.faults.push({ name, what: 'missing' });
    return value ?? '';
  }

  short(name: string, longest: number): string | undefined {
    const value = text(this.form, name);
    if (value !== undefined && value.length > longest) this.faults.push({ name, what: 'tooLong', to: longest });
    return value;
  }

  /** @param step 1 for whole numbers; other numbers are rounded to it */
  figure(name: string, from: number, to: number, step = 1): number | undefined {
    const value = number(this.form, name);
    if (value === undefined) return undefined;
    if (typeof value === 'string') this.faults.push({ name, what: 'noNumber' });
    else if (value < from || value > to) this.faults.push({ name, what: 'outside', from, to });
    else if (step === 1 && !Number.isInteger(value)) this.faults.push({ name, what: 'notWhole' });
    else return step === 1 ? value : Number((Math.round(value / step) * step).toFixed(6));
    return undefined;
  }
}

export function outingSaid(form: FormData): { readonly told: OutingTold; readonly faults: readonly Fault[] } {
  const reading = new Reading(form);
  const told = {
    wentOn: reading.needed('wentOn', day(form, 'wentOn')),
    standId: reading.needed('standId', text(form, 'standId')),
    ledBy: text(form, 'ledBy'),
    people: reading.figure('people', 1, 1_000),
  };
  return { told, faults: reading.faults };
}

/**
 * What was done at one tree: it is written down, cut, placed, or several of them.
 *
 * @param labels of trees that are there already: a label belongs to one tree for good
 * @param hasPhotos a tree of which photos were taken needs nothing else
 */
export function treeSaid(form: FormData, trip: OutingTold, labels: ReadonlySet<string>, hasPhotos = false): { readonly told: TreeTold; readonly faults: readonly Fault[] } {
  const reading = new Reading(form);
  const chosen = reading.needed('donorTreeId', text(form, 'donorTreeId'));
  const isNew = chosen === NEW_TREE;
  const tree = isNew ? newTree(reading, trip, labels) : undefined;
  const place = placeIn(reading);
  const bundle = bundleIn(reading);
  const isIdle = !isNew && !place && !bundle && !hasPhotos && reading.faults.length === 0;
  if (isIdle) reading.needed('cuttings', undefined);
  return { told: { donorTreeId: isNew ? undefined : chosen, tree, bundle, place }, faults: reading.faults };
}

function newTree(reading: Reading, { standId, wentOn }: OutingTold, labels: ReadonlySet<string>): NewTreeTold {
  const { form } = reading;
  const label = reading.needed('label', reading.short('label', LONGEST_LABEL));
  if (labels.has(label)) reading.faults.push({ name: 'label', what: 'inUse' });
  return {
    label,
    standId,
    taxonId: reading.needed('taxonId', text(form, 'taxonId')),
    sex: text(form, 'sex') ?? 'unknown',
    ageClass: text(form, 'ageClass'),
    estimatedAgeYears: reading.figure('estimatedAgeYears', 1, 10_000),
    state: 'standing',
    stateSeenOn: wentOn,
  };
}

function bundleIn(reading: Reading): BundleTold | undefined {
  const { form } = reading;
  const told = {
    cuttings: reading.figure('cuttings', 1, 1_000_000),
    heightM: reading.figure('heightM', 0, 150, 0.1),
    shoot: text(form, 'shoot'),
    foliage: text(form, 'foliage'),
    base: text(form, 'base'),
    lengthCm: reading.figure('lengthCm', 0.1, 500, 0.1),
  };
  const { cuttings, ...material } = told;
  if (cuttings !== undefined) return { ...material, cuttings };
  // How it was cut, and not how many: that would be lost.
  if (Object.values(material).some((value) => value !== undefined) && text(form, 'cuttings') === undefined) reading.needed('cuttings', undefined);
  return undefined;
}

function placeIn(reading: Reading): ExactPlace | undefined {
  const [latitude, longitude] = [reading.figure('place/latitude', -90, 90, 0.000_001), reading.figure('place/longitude', -180, 180, 0.000_001)];
  const rest = {
    uncertaintyM: reading.figure('place/uncertaintyM', 1, 100_000) ?? null,
    elevationM: reading.figure('place/elevationM', -500, 9_000) ?? null,
    directions: reading.short('place/directions', LONGEST_WAY) ?? null,
  };
  if (latitude !== undefined && longitude !== undefined) return { latitude, longitude, ...rest };
  const told = ['latitude', 'longitude', 'uncertaintyM', 'elevationM', 'directions'].filter((name) => text(reading.form, `place/${name}`) !== undefined);
  const missing = ['latitude', 'longitude'].find((name) => !told.includes(name));
  if (told.length > 0 && missing !== undefined) reading.faults.push({ name: `place/${missing}`, what: 'bothOrNone' });
  return undefined;
}
