import { TypedSheetAnswer, WorkList, WorkListInList } from '@sprigline/contract';
import type { Diary } from './diary.ts';

export interface Sheet {
  readonly id: string;
  /** @returns the printed number of the batch's line */
  numberOf(batch: string): number;
}

interface Line { readonly number: number }

/** @param own the batches that must stand on it, with as many plants as the script knows of */
export async function printed(diary: Diary, kind: WorkList['kind'], asked: object, own: readonly string[]): Promise<Sheet> {
  const { list } = diary;
  const { id } = await diary.make('work-lists', { kind, asked });
  const { lines } = WorkList.parse(await diary.get(`work-lists/${id}`, diary.volunteer(2)));
  const byId = (a: readonly [string, number], b: readonly [string, number]): number => (a[0] < b[0] ? -1 : 1);
  diary.compare(`a list for ${kind}`, lines.map(({ batch }) => [batch.id, batch.balance] as const).sort(byId), own.map((batch) => [batch, list.count(batch)] as const).sort(byId));
  const table = await diary.ask('GET', `work-lists/${id}/lines.csv`, undefined, diary.volunteer(2));
  diary.compare(`its table for ${kind}`, table.body.trimEnd().split('\r\n').length, own.length + 1);
  return { id, numberOf: (batch) => lines.find((line) => line.batch.id === batch)?.number ?? 0 };
}

/** In two halves, and the first half once more by somebody else: written once. */
export async function typedBack(diary: Diary, { id }: Sheet, lines: readonly Line[]): Promise<void> {
  const half = Math.ceil(lines.length / 2);
  const type = async (some: readonly Line[], by: number): Promise<string[]> => {
    const answer = await diary.ask('POST', `work-lists/${id}/typed`, { observedOn: diary.today, writtenAt: diary.now.toISOString(), lines: some }, diary.volunteer(by));
    return TypedSheetAnswer.parse(answer.json()).lines.map(({ status, problem }) => problem?.type ?? status);
  };
  const all = (some: readonly Line[], status: string): string[] => some.map(() => status);
  diary.compare('the first half of a sheet', await type(lines.slice(0, half), 3), all(lines.slice(0, half), 'written'));
  diary.compare('the same lines again', await type(lines.slice(0, half), 4), all(lines.slice(0, half), 'already'));
  diary.compare('the other half', await type(lines.slice(half), 4), all(lines.slice(half), 'written'));
  const sheets = WorkListInList.array().parse(await diary.get('work-lists', diary.volunteer(3)));
  diary.compare('lines typed', sheets.find((sheet) => sheet.id === id)?.typed, lines.length);
}

/** What has no roots by May is called, tray by tray; three trays on the sheet are left for another day. */
export async function callBySheet(diary: Diary, over: readonly string[]): Promise<void> {
  const { list } = diary;
  const cuttings = [...list.batches.values()].filter(({ id, stage }) => stage === 'cutting' && list.count(id) > 0).map(({ id }) => id);
  const sheet = await printed(diary, 'calling', { days: 150 }, cuttings);
  await typedBack(diary, sheet, over.map((batch) => ({ number: sheet.numberOf(batch), called: list.count(batch) })));
  over.forEach((batch) => list.end(batch, list.count(batch), 'notRooted'));
}
