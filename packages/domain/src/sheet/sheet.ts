import type { Look } from '../ledger/entry.ts';

/** What a column of a log sheet can hold. */
export const SHEET_FIELDS = [
  'date', 'what', 'label', 'donor', 'stand', 'species', 'count', 'rooted', 'toLabel', 'place', 'recipe', 'cause', 'notes',
] as const;
export type SheetField = (typeof SHEET_FIELDS)[number];

/** What a row of a log sheet can tell. `called` also comes from thrown out with the reason "no roots". */
export const SHEET_ACTS = [
  'stuck', 'counted', 'died', 'thrownOut', 'called', 'lifted', 'potted', 'planted', 'moved', 'givenOut', 'found',
] as const;
export type SheetAct = (typeof SHEET_ACTS)[number];

/** Order of the parts of a date: 2026-11-25, 25/11/2026 or 11/25/2026. */
export const DAY_ORDERS = ['ymd', 'dmy', 'mdy'] as const;
export type DayOrder = (typeof DAY_ORDERS)[number];

/** Fields whose spellings may be joined: what many hands typed in many ways. */
export const SPELT_FIELDS = ['donor', 'stand', 'species', 'place', 'recipe', 'cause'] as const;
export type SpeltField = (typeof SPELT_FIELDS)[number];

/** How a sheet is to be read, as a person confirmed it. */
export interface SheetPlan {
  /** Column of each field, from 0; fields that the sheet has not are left out. */
  readonly columns: Readonly<Partial<Record<SheetField, number>>>;
  /** What each word in the column *what* means, by its plain spelling. */
  readonly acts: Readonly<Record<string, SheetAct>>;
  readonly dayOrder: DayOrder;
  /** Joined spellings: from the plain spelling to the one to keep. */
  readonly spellings: Readonly<Partial<Record<SpeltField, Readonly<Record<string, string>>>>>;
  /** How counts were made: those that tell roots, and the others. A sheet seldom says. */
  readonly looks: { readonly withRoots: Look; readonly withoutRoots: Look };
}

/** One row that could be read. Row numbers are those that a spreadsheet shows: the heading is row 1. */
export interface SheetFact {
  readonly row: number;
  readonly act: SheetAct;
  readonly day: string;
  readonly label: string;
  readonly n: number;
  readonly rooted?: number | undefined;
  readonly toLabel?: string | undefined;
  readonly donor?: string | undefined;
  readonly stand?: string | undefined;
  readonly species?: string | undefined;
  readonly place?: string | undefined;
  readonly recipe?: string | undefined;
  readonly cause?: string | undefined;
  readonly notes?: string | undefined;
}

export const SHEET_FAULTS = [
  'day-missing', 'day-unreadable', 'day-in-future', 'act-missing', 'act-unknown', 'label-missing', 'label-unknown',
  'label-of-two-donors', 'label-stuck-twice', 'label-of-another-sticking', 'to-label-missing', 'to-label-same',
  'count-missing', 'count-unreadable', 'count-too-large', 'rooted-unreadable', 'rooted-above-alive', 'donor-missing', 'donor-in-two-stands',
  'donor-of-two-species', 'stand-missing', 'species-missing', 'place-missing', 'stage-gone-back', 'formula', 'too-long',
  'cells-beyond-heading',
] as const;
export type SheetFaultCode = (typeof SHEET_FAULTS)[number];

/** Something in a cell that must be mended before anything is written. */
export interface SheetFault {
  readonly row: number;
  /** The field concerned; nothing where the whole row is meant. */
  readonly field?: SheetField | undefined;
  readonly code: SheetFaultCode;
  /** What stands there, cut to 60 characters. */
  readonly seen?: string | undefined;
  /** Row of the other one, where two rows do not go together. */
  readonly other?: number | undefined;
}
