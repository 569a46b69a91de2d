import { Injectable } from '@nestjs/common';
import type { NewEntry, TypedLineAnswer, TypedSheet, TypedSheetAnswer } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { authorOf, LedgerWriter, type WrittenItem } from '../entry/entry.module.ts';
import type { Caller } from '../http/caller.ts';
import { toProblem } from '../http/problem.ts';
import { entriesOfLine } from './typed-line.ts';
import { TypingQueries } from './typing.queries.ts';

/** A line on its way into the books. */
interface Sent {
  readonly number: number;
  readonly entries: readonly NewEntry[];
}

const TYPED_ALREADY = new DomainError('work-list/typed-already', 'mend what is in the books on the page of the batch');

@Injectable()
export class TypingService {
  constructor(
    private readonly database: Database,
    private readonly queries: TypingQueries,
    private readonly ledger: LedgerWriter,
  ) {}

  /**
   * Writes lines of a sheet. A line is written whole or not at all; a refused one keeps no other out.
   * Sent again, nothing is written twice. The whole is one transaction.
   *
   * What cannot be is asked about first, as at the desk. But who types a sheet was not there and cannot
   * look again: a line that is confirmed is taken as it was seen, like one from a phone, and flagged.
   */
  typeBack(caller: Caller, listId: string, sheet: TypedSheet): Promise<TypedSheetAnswer> {
    return this.database.inTransaction(caller, async (sql) => {
      await this.queries.lock(sql, listId);
      const answers = new Map<number, TypedLineAnswer>();
      const sent = await this.#entries(sql, caller, listId, sheet, answers);
      const isConfirmed = ({ number }: Sent): boolean => sheet.confirm.includes(number);
      const asked = await this.#write(sql, caller, 'desk', sent.filter((line) => !isConfirmed(line)), answers);
      const asSeen = await this.#write(sql, caller, 'outbox', sent.filter(isConfirmed), answers);
      await this.queries.mark(sql, caller, listId, [...asked, ...asSeen].flatMap(({ number, entries }) => entries.map(({ id }) => ({ number, entryId: id }))));
      return { lines: sheet.lines.flatMap(({ number }) => answers.get(number) ?? []) };
    });
  }

  /** What can be sent to the books; the rest is answered. */
  async #entries(sql: UnitOfWork, caller: Caller, listId: string, sheet: TypedSheet, answers: Map<number, TypedLineAnswer>): Promise<Sent[]> {
    const { programmeId } = caller;
    const printed = new Map((await this.queries.lines(sql, programmeId, listId, sheet.lines.map(({ number }) => number))).map((line) => [line.number, line]));
    return sheet.lines.flatMap((line): Sent[] => {
      const { number } = line;
      try {
        const row = printed.get(number);
        if (!row) throw new DomainError('work-list/no-such-line', 'no line of that number stands on that sheet', { line: number });
        const entries = entriesOfLine({ programmeId, listId, ...row }, line, sheet);
        if (row.typed.length > 0 && entries.some(({ id }) => !row.typed.includes(id))) throw TYPED_ALREADY;
        return [{ number, entries }];
      } catch (refusal) {
        if (!(refusal instanceof DomainError)) throw refusal;
        answers.set(number, refused(number, refusal));
        return [];
      }
    });
  }

  /** Tries until no line that is left is refused: each try leaves out those that were. */
  async #write(sql: UnitOfWork, caller: Caller, door: 'desk' | 'outbox', sent: readonly Sent[], answers: Map<number, TypedLineAnswer>): Promise<Sent[]> {
    for (let left = sent; left.length > 0; ) {
      const items = await this.ledger.write(sql, authorOf(caller), { door, entries: left.flatMap(({ entries }) => entries), confirm: new Set(), together: true });
      const byId = new Map(items.map((item) => [item.id, item]));
      const told = left.map((line) => ({ line, answer: answerOf(line, byId) }));
      const fits = told.filter(({ answer }) => answer !== undefined).map(({ line }) => line);
      const isWritten = items.every(({ status }) => status !== 'refused');
      for (const { line, answer } of told) answers.set(line.number, answer ?? refusalOf(line, byId));
      if (isWritten) return left.filter(({ number }) => answers.get(number)?.status === 'written');
      left = fits;
    }
    return [];
  }
}

const itemsOf = ({ entries }: Sent, byId: ReadonlyMap<string, WrittenItem>): WrittenItem[] => entries.flatMap(({ id }) => byId.get(id) ?? []);

/** Refused for a reason of its own, and not because another line was. */
const isOwnRefusal = ({ status, problem }: WrittenItem): boolean => status === 'refused' && !problem?.type.endsWith('/entry/one-was-refused');

/** Nothing while the line itself is refused. */
function answerOf(line: Sent, byId: ReadonlyMap<string, WrittenItem>): TypedLineAnswer | undefined {
  const own = itemsOf(line, byId);
  if (own.some(isOwnRefusal)) return undefined;
  return { number: line.number, status: own.every(({ status }) => status === 'already') ? 'already' : 'written', flags: own.flatMap(({ flags }) => flags) };
}

function refusalOf(line: Sent, byId: ReadonlyMap<string, WrittenItem>): TypedLineAnswer {
  const problem = itemsOf(line, byId).find(isOwnRefusal)?.problem;
  // The id is made from the line: what it stands for is what was typed there before.
  if (problem?.type.endsWith('/entry/id-reused')) return refused(line.number, TYPED_ALREADY);
  return { number: line.number, status: 'refused', flags: [], ...(problem && { problem }) };
}

const refused = (number: number, refusal: DomainError): TypedLineAnswer => ({ number, status: 'refused', flags: [], problem: toProblem(refusal) });
