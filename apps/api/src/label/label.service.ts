import { Injectable } from '@nestjs/common';
import type { GiveLabel, Label, LabelChoice, LabelLine, LabelRoll, LabelRollInList, LabelRollQuery, Labelled, NewLabelRoll } from '@sprigline/contract';
import { DomainError, keptLabel, labelCodes, refuseMistypedLabel } from '@sprigline/domain';
import { randomInt } from 'node:crypto';
import { TrailQueries } from '../audit/trail.queries.ts';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { lock } from '../entry/pages/locks.queries.ts';
import { type Caller, deliveredBy } from '../http/caller.ts';
import type { Part } from '../http/part-of-list.ts';
import { LabelLineQueries } from './label-line.queries.ts';
import { LabelQueries } from './label.queries.ts';
import { RollQueries } from './roll.queries.ts';

/** As many labels as one answer tells, and one sheet prints. */
const MOST_LINES = 2_000;

/** Fair dice that nobody can guess: who knows one code of a roll must not know the next. */
const SHARP = 2 ** 47;
const chance = (): number => randomInt(SHARP) / SHARP;

/** What codes are on, and codes that are on nothing yet. */
@Injectable()
export class LabelService {
  constructor(
    private readonly database: Database,
    private readonly trail: TrailQueries,
    private readonly labels: LabelQueries,
    private readonly rolls: RollQueries,
    private readonly lines: LabelLineQueries,
  ) {}

  /** @throws DomainError `label/mistyped` for what should be a drawn code and isn't, `label/unknown` */
  byCode(caller: Caller, code: string): Promise<Label> {
    return this.database.inTransaction(caller, async (sql) => {
      const label = await this.labels.byCode(sql, caller.programmeId, code, keptLabel(code));
      if (label) return label;
      refuseMistypedLabel(code);
      throw new DomainError('label/unknown', `nobody has drawn or given the label ${code}`, { label: code });
    });
  }

  /** @throws DomainError `label/mistyped`, `batch/label-taken` when it is on another thing, `batch/unknown`, `record/no-such-…` */
  give(caller: Caller, { code: typed, batchId, donorTreeId, placeId }: GiveLabel): Promise<Label> {
    const code = keptLabel(typed);
    const is: Labelled = batchId ? 'batch' : donorTreeId ? 'donorTree' : 'place';
    const id = batchId ?? donorTreeId ?? placeId ?? '';
    return this.database.inTransaction(caller, async (sql) => {
      await lock(sql, caller.programmeId, [code]);
      const there = await this.labels.byCode(sql, caller.programmeId, code, code);
      // What is there already may be of an old numbering that looks like ours; only new ones are refused.
      if (!there) refuseMistypedLabel(typed);
      if (!there || there.is === 'unclaimed') await this.labels.give(sql, { ...caller, deliveredBy: deliveredBy(caller) }, is, [{ code, id }]);
      else if (there.is !== is || there.id !== id) {
        throw new DomainError('batch/label-taken', `${there.code} has been used before; a label is never used again`, { label: there.code });
      }
      const label = await this.labels.byCode(sql, caller.programmeId, code, code);
      if (!label) throw new Error('a label that was just given is there');
      return label;
    });
  }

  /** @throws DomainError `label/choose-first`, `label/too-many` */
  list(caller: Caller, choice: LabelChoice): Promise<LabelLine[]> {
    return this.database.inTransaction(caller, (sql) => this.#lines(sql, caller, choice));
  }

  /**
   * Draws a code for each of the chosen things that has none. Done again it changes nothing.
   *
   * @throws DomainError `label/choose-first`, `label/too-many`
   */
  giveMissing(caller: Caller, choice: LabelChoice): Promise<LabelLine[]> {
    return this.database.inTransaction(caller, async (sql) => {
      // Two people who print the same bench at once: the second finds the codes of the first.
      await lock(sql, caller.programmeId, ['labels that are missing']);
      const lines = await this.#lines(sql, caller, choice);
      const bare = lines.filter(({ code }) => code === null);
      if (bare.length === 0) return lines;
      const codes = await this.#draw(sql, caller.programmeId, bare.length);
      const given = bare.map(({ id, is }, at) => ({ id, is, code: codes[at] ?? '' }));
      await this.labels.give(sql, { ...caller, deliveredBy: deliveredBy(caller) }, given[0]?.is ?? 'batch', given);
      const codeOf = new Map(given.map(({ id, code }) => [id, code]));
      return lines.map((line) => ({ ...line, code: line.code ?? codeOf.get(line.id) ?? null }));
    });
  }

  listRolls(caller: Caller, query: LabelRollQuery): Promise<Part<LabelRollInList>> {
    return this.database.inTransaction(caller, (sql) => this.rolls.list(sql, caller.programmeId, query));
  }

  /** @throws DomainError `record/unknown` */
  roll(caller: Caller, id: string): Promise<LabelRoll> {
    return this.database.inTransaction(caller, (sql) => this.rolls.one(sql, caller.programmeId, id));
  }

  /** @throws DomainError `record/id-reused` */
  makeRoll(caller: Caller, roll: NewLabelRoll): Promise<LabelRoll> {
    return this.database.inTransaction(caller, async (sql) => {
      if (await this.trail.isNew(sql, caller, 'label-roll', roll, 'record/id-reused')) {
        await this.rolls.insert(sql, caller, roll, await this.#draw(sql, caller.programmeId, roll.n));
      }
      return this.rolls.one(sql, caller.programmeId, roll.id);
    });
  }

  async #lines(sql: UnitOfWork, { programmeId }: Caller, choice: LabelChoice): Promise<LabelLine[]> {
    if (choice.placeId === undefined && choice.standId === undefined && choice.ids === undefined) {
      throw new DomainError('label/choose-first', 'name a place, a stand, or ids');
    }
    const lines = await this.lines.list(sql, programmeId, choice, MOST_LINES + 1);
    if (lines.length > MOST_LINES) throw new DomainError('label/too-many', `more than ${MOST_LINES} labels: choose a smaller place`, { most: MOST_LINES });
    return lines;
  }

  /** Of a thousand million codes hardly one is taken, so the first draw is nearly always the last. */
  async #draw(sql: UnitOfWork, programmeId: string, n: number): Promise<string[]> {
    const codes = labelCodes(chance, n);
    const taken = await this.labels.taken(sql, programmeId, codes);
    if (taken.size === 0) return codes;
    const free = codes.filter((code) => !taken.has(code));
    return [...free, ...labelCodes(chance, n - free.length, new Set(codes))];
  }
}
