import { z } from 'zod';
import { Look } from './entry/words.ts';
import { Id, ProgrammePath } from './shapes.ts';

/** Largest log sheet taken, in bytes. */
export const SHEET_BYTES = 50 * 1024 * 1024;
/** Most rows that a sheet may have. */
export const SHEET_ROWS = 100_000;

export const SheetField = z.enum([
  'date', 'what', 'label', 'donor', 'stand', 'species', 'count', 'rooted', 'toLabel', 'place', 'recipe', 'cause', 'notes',
]);
export type SheetField = z.infer<typeof SheetField>;

export const SheetAct = z.enum([
  'stuck', 'counted', 'died', 'thrownOut', 'called', 'lifted', 'potted', 'planted', 'moved', 'givenOut', 'found',
]);
export type SheetAct = z.infer<typeof SheetAct>;

export const DayOrder = z.enum(['ymd', 'dmy', 'mdy']);
export const SpeltField = z.enum(['donor', 'stand', 'species', 'place', 'recipe', 'cause']);
export const Encoding = z.enum(['utf-8', 'utf-16le', 'windows-1252']);
export const Delimiter = z.enum([',', ';', '\t']);

const Cell = z.string().max(4_000);

/** How a sheet is to be read, as a person confirmed it. */
export const ImportPlan = z.strictObject({
  columns: z.partialRecord(SheetField, z.int().min(0).max(200)),
  acts: z.record(Cell, SheetAct),
  dayOrder: DayOrder,
  spellings: z.partialRecord(SpeltField, z.record(Cell, Cell)).default({}),
  looks: z.strictObject({ withRoots: Look, withoutRoots: Look }).default({ withRoots: 'tug', withoutRoots: 'look' }),
});
export type ImportPlan = z.infer<typeof ImportPlan>;

/** What must be decided about a sheet, and what was guessed. */
export const SheetGuess = z.object({
  encoding: Encoding,
  delimiter: Delimiter,
  headings: z.array(z.string()),
  /** The first rows, as they stand. */
  sample: z.array(z.array(z.string())),
  rows: z.int(),
  columns: z.partialRecord(SheetField, z.int()),
  /** Words in the column *what*, with how often, and what they were taken to mean. */
  words: z.array(z.object({ word: z.string(), times: z.int(), act: SheetAct.optional() })),
  /** One: told by the dates themselves. Several: a person must say. */
  dayOrders: z.array(DayOrder),
  spellings: z.partialRecord(
    SpeltField,
    z.array(z.object({ keep: z.string(), sameApartFromCase: z.boolean(), spellings: z.array(z.object({ seen: z.string(), times: z.int() })) })),
  ),
});
export type SheetGuess = z.infer<typeof SheetGuess>;

export const SheetFault = z.object({
  row: z.int(),
  field: SheetField.optional(),
  column: z.string().optional(),
  code: z.string(),
  seen: z.string().optional(),
  other: z.int().optional(),
});
export type SheetFault = z.infer<typeof SheetFault>;

const ChangedRow = z.object({ row: z.int(), entryId: z.string(), now: z.string(), before: z.string() });

/** What writing the sheet would do. Nothing is written while there is one fault. */
export const DryRun = z.object({
  faults: z.array(SheetFault),
  faultCount: z.int(),
  rows: z.int(),
  added: z.int(),
  same: z.int(),
  changed: z.array(ChangedRow),
  changedCount: z.int(),
  goneCount: z.int(),
  /** Rows added, by what they tell. */
  byAct: z.partialRecord(SheetAct, z.int()),
  newNames: z.partialRecord(z.enum(['stand', 'species', 'donor', 'place', 'recipe']), z.array(z.string())),
});
export type DryRun = z.infer<typeof DryRun>;

export const ImportState = z.enum(['read', 'writing', 'written', 'failed']);

export const Import = z.object({
  id: z.string(),
  fileName: z.string(),
  bytes: z.int(),
  uploadedAt: z.string(),
  uploadedBy: z.string(),
  state: ImportState,
  guess: SheetGuess,
  plan: ImportPlan.nullable(),
  progress: z.object({ done: z.int(), total: z.int() }).nullable(),
  /** After writing: entries written, entries replaced, rows that were there already. */
  result: z.object({ written: z.int(), replaced: z.int(), same: z.int(), flags: z.int() }).nullable(),
  failure: z.string().nullable(),
});
export type Import = z.infer<typeof Import>;

export const ImportList = z.object({ imports: z.array(Import.pick({ id: true, fileName: true, bytes: true, uploadedAt: true, uploadedBy: true, state: true, result: true })) });
export type ImportList = z.infer<typeof ImportList>;

export const ImportPath = ProgrammePath.extend({ id: Id });
export type ImportPath = z.infer<typeof ImportPath>;

/** Query of the upload: the caller makes the id, so that sending again is the same import. */
export const UploadSheet = z.object({
  id: Id,
  fileName: z.string().trim().min(1).max(200),
  encoding: Encoding.optional(),
});
export type UploadSheet = z.infer<typeof UploadSheet>;

export const WriteImport = z.strictObject({
  /** Write what rows say now over what they said when they were last imported. */
  replaceChanged: z.boolean().default(false),

});
export type WriteImport = z.infer<typeof WriteImport>;

/** The file itself. */
export const SheetContent = z.custom<Uint8Array>((value) => value instanceof Uint8Array, { error: 'send the file as text/csv or application/octet-stream' });
export type SheetContent = z.infer<typeof SheetContent>;
