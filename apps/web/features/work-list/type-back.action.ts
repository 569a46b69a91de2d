'use server';

import { type Problem, type TypedLineAnswer, TypedSheetAnswer } from '@sprigline/contract';
import type { WorkListKind } from '@sprigline/domain';
import { getTranslations } from 'next-intl/server';
import { revalidatePath } from 'next/cache';
import { ask } from '../../lib/api.ts';
import { isTicked, text } from '../../lib/form-values.ts';
import { withoutFacts } from '../../lib/ledger.ts';
import { placesOf } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { placeChoices } from '../../lib/place-path.ts';
import { Refused } from '../../lib/refused.ts';
import { wordsFor } from '../../lib/words-for.ts';
import { apiOf } from '../../lib/workplace.ts';
import { nameOf } from './typed-fields.ts';
import { type LineSaid, linesSaid } from './typed-said.ts';
import type { LineState, TypingState } from './typing-state.ts';

/** Refusals that somebody who holds the paper may overrule. */
const MAY_CONFIRM = ['entry/needs-another-look', 'entry/looks-wrong', 'entry/breaks-later-ones', 'batch/held'];

/** Types what stands in the form into the books, and answers line by line. */
export async function typeBack(programme: string, listId: string, kind: WorkListKind, numbers: readonly number[], before: TypingState, form: FormData): Promise<TypingState> {
  const places = new Map(placeChoices(await placesOf(programme)).map(({ value, words }) => [words.toLowerCase(), value]));
  const { said, lost } = linesSaid(form, kind, numbers, places);
  const t = await getTranslations('workLists.type');
  const refused: Record<number, LineState> = Object.fromEntries(lost.map((number) => [number, { words: t('noSuchPlace'), mayConfirm: false }]));
  const state = { turn: before.turn + 1, values: typedInto(form) };
  if (said.length === 0) return { ...state, refused, ...(lost.length === 0 ? { words: t('nothing') } : { taken: 0 }) };

  try {
    const { body } = await ask(apiOf(programme, 'work-lists', listId, 'typed'), TypedSheetAnswer, { method: 'POST', body: sheetSaid(form, said) });
    for (const answer of body.lines) if (answer.problem) refused[answer.number] = await lineState(answer);
    revalidatePath(`${pageOf(programme, 'work-lists', listId)}`, 'layout');
    return { ...state, refused, taken: body.lines.filter(({ status }) => status !== 'refused').length };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    const beside = await besideLines(error.problem, said);
    const others = error.problem.errors?.filter(({ pointer }) => !pointer.startsWith('#/lines/')) ?? [];
    const { errors: _, ...problem } = error.problem;
    return { ...state, refused: { ...refused, ...beside }, problem: { ...problem, errors: others }, words: await wordsFor(problem) };
  }
}

function sheetSaid(form: FormData, lines: readonly LineSaid[]): object {
  return {
    observedOn: text(form, 'observedOn'), seenBy: text(form, 'seenBy'), workdayId: text(form, 'workdayId'), look: text(form, 'look'), writtenAt: new Date().toISOString(),
    lines, confirm: lines.filter(({ number }) => isTicked(form, nameOf(number, 'confirm'))).map(({ number }) => number),
  };
}

async function lineState({ problem }: TypedLineAnswer): Promise<LineState> {
  if (!problem) return { words: '', mayConfirm: false };
  const there = problem.discrepancies?.[0]?.there;
  // How many the books had, beside what was typed.
  const had = there === undefined ? '' : ` ${(await getTranslations('workLists.type'))('there', { n: there })}`;
  return { words: (await wordsFor(withoutFacts(problem))) + had, mayConfirm: MAY_CONFIRM.some((code) => problem.type.endsWith(`/${code}`)) };
}

/** What the API says of a line by its place in the request, beside the printed number. */
async function besideLines({ errors = [] }: Problem, said: readonly LineSaid[]): Promise<Record<number, LineState>> {
  const [t, boxes] = await Promise.all([getTranslations('workLists.type'), getTranslations('workLists.boxes')]);
  return Object.fromEntries(errors.flatMap(({ pointer, detail }) => {
    const [, at = '', field = ''] = /^#\/lines\/(\d+)(?:\/([a-zA-Z]+))?/.exec(pointer) ?? [];
    const line = said[Number(at)];
    if (at === '' || !line) return [];
    const name = boxes.has(field as 'alive') ? boxes(field as 'alive') : field;
    return [[line.number, { words: /number|int\b/i.test(detail) ? t('notWhole', { field: name }) : `${name}: ${detail}`, mayConfirm: false }] as const];
  }));
}

function typedInto(form: FormData): Record<string, string> {
  return Object.fromEntries([...form].flatMap(([name, value]) => (typeof value === 'string' && !name.startsWith('$') ? [[name, value]] : [])));
}
