'use server';

import type { Problem, WrittenEntry } from '@sprigline/contract';
import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked } from '../../lib/form-values.ts';
import { withoutFacts, writeEntries } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Refused } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';
import { wordsFor } from '../../lib/words-for.ts';
import { type LineEntry, lineField, traySaid } from './tray-said.ts';

/** Writes a tray's fill, line by line: a refused line does not keep the others out, and none is written twice. */
export async function stickTray(programme: string, tripId: string, lines: number, before: FormState, form: FormData): Promise<FormState> {
  const said = traySaid(form, lines);
  const state = await submit(before, form, async () => {
    if (said.length === 0) throw new Refused({ type: '/problems/http/unfit-request', title: '', status: 422, errors: [{ pointer: `#/${lineField(0, 'n')}`, detail: 'received undefined' }] });
    const entries = said.map(({ entry }) => entry);
    try {
      const written = await writeEntries(programme, entries, isTicked(form, 'confirm') ? entries.map(({ id }) => id) : []);
      await refuseByLine(said, written.entries);
    } catch (error) {
      throw error instanceof Refused ? new Refused(atTheirLines(error.problem, said)) : error;
    }
  });
  if (state.isDone) redirect(`${pageOf(programme, 'stick')}?tripId=${tripId}&stuck=${said.length}` as Route);
  return state;
}

/** What was refused, each beside the label of its line. */
async function refuseByLine(said: readonly LineEntry[], written: readonly WrittenEntry[]): Promise<void> {
  const refused = written.flatMap(({ id, problem }) => {
    const line = said.find(({ entry }) => entry.id === id);
    return problem && line ? [{ problem, at: line.at }] : [];
  });
  const [first] = refused;
  if (!first) return;
  const errors = await Promise.all(refused.map(async ({ problem, at }) => ({ pointer: `#/${lineField(at, fieldOf(problem))}`, detail: await wordsFor(withoutFacts(problem)) })));
  throw new Refused({ ...withoutFacts(first.problem), errors });
}

const fieldOf = ({ type }: Problem): string => (type.endsWith('label-taken') ? 'label' : 'n');

/** The API speaks of entries in the order sent; the form has a line for every bundle, sent or not. */
function atTheirLines(problem: Problem, said: readonly LineEntry[]): Problem {
  const errors = problem.errors?.map(({ pointer, detail }) => {
    const [, index = '', field = ''] = /^#\/entries\/(\d+)\/(?:saying\/)?(.*)$/.exec(pointer) ?? [];
    const line = said[Number(index)];
    if (index === '' || !line) return { pointer, detail };
    const own = field.startsWith('damaged') ? (field.endsWith('how') ? 'how' : 'damaged') : field;
    const isOfTheTray = ['placeId', 'recipeVersionId', 'observedOn', 'medium', 'note'].includes(own);
    return { pointer: `#/${isOfTheTray ? own : lineField(line.at, own)}`, detail };
  });
  return errors ? { ...problem, errors } : problem;
}
