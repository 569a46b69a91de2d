'use server';

import type { Problem } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { getTranslations } from 'next-intl/server';
import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, text } from '../../lib/form-values.ts';
import { writeEntry, writeTogether } from '../../lib/ledger.ts';
import { lineField } from '../../lib/line-field.ts';
import { type LineEntry, writeLines } from '../../lib/lines.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Refused, RefusedPart } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';
import { checkSaid, mixSaid, moveSaid, plantSaid, potSaid } from './bench-said.ts';
import { LINE_FIELDS, type Job } from './jobs.ts';

const SHARED = ['placeId', 'container', 'medium', 'observedOn', 'note', 'label', 'labels', 'positions'];
const SAID = { potting: potSaid, moving: moveSaid, check: checkSaid } as const;

/** Writes many lines, each for itself, and comes back to the same list. */
export async function writeJob(programme: string, job: keyof typeof SAID, lines: number, back: string, before: FormState, form: FormData): Promise<FormState> {
  const said: LineEntry[] = SAID[job](form, lines);
  const first = LINE_FIELDS[job][0] ?? 'n';
  const state = await submit(before, form, async () => {
    if (said.length === 0) throw await nothingTold(lineField(0, first));
    const shared = job === 'potting' ? SHARED.filter((name) => name !== 'label') : SHARED;
    await writeLines(programme, said, isTicked(form, 'confirm'), ({ type }) => (type.endsWith('label-taken') ? 'label' : first), shared);
  });
  if (state.isDone) redirect(`${back}${back.includes('?') ? '&' : '?'}done=${said.length}` as Route);
  return state;
}

/** Writes one mixture and shows it. */
export async function writeMixture(programme: string, lines: number, before: FormState, form: FormData): Promise<FormState> {
  const entry = mixSaid(form, lines);
  const state = await submit(before, form, async () => {
    try {
      await writeEntry(programme, entry, isTicked(form, 'confirm'));
    } catch (error) {
      throw error instanceof Refused ? new Refused(atItsField(error.problem)) : error;
    }
  });
  if (state.isDone) redirect(pageOf(programme, 'batches', text(form, 'toBatchId') ?? '') as Route);
  return state;
}

/** Writes one entry for each tagged plant: all of them, or none. */
export async function writePlanting(programme: string, lines: number, before: FormState, form: FormData): Promise<FormState> {
  let planted = 0;
  const state = await submit(before, form, async () => {
    try {
      const entries = plantSaid(form, lines);
      planted = entries.length;
      await writeTogether(programme, entries, isTicked(form, 'confirm'));
    } catch (error) {
      if (error instanceof DomainError) throw new Refused({ type: `/problems/${error.code}`, title: error.message, detail: error.message, status: 422, facts: { ...error.facts } });
      throw error instanceof Refused ? new Refused(atItsField(error.problem, error instanceof RefusedPart && error.problem.type.endsWith('label-taken'))) : error;
    }
  });
  if (state.isDone) redirect(`${pageOf(programme, 'bench', 'planting' satisfies Job)}?done=${planted}` as Route);
  return state;
}

async function nothingTold(field: string): Promise<Refused> {
  const words = (await getTranslations('bench'))('nothingTold');
  return new Refused({ type: 'about:blank', title: words, detail: words, status: 422, errors: [{ pointer: `#/${field}`, detail: words }] });
}

/** Hundreds of entries come out of a few fields: what is wrong with one of them stands beside the field it came from, once. */
function atItsField(problem: Problem, isLabel = false): Problem {
  if (isLabel) return { ...problem, errors: [{ pointer: '#/labels', detail: problem.detail ?? problem.title }] };
  if (!problem.errors) return problem;
  const errors = problem.errors.map(({ pointer, detail }) => ({ pointer: pointer.replace(/^#\/entries\/\d+\/(?:saying\/)?/, '#/').replace(/^#\/parts\b.*$/, '#/parts'), detail }));
  return { ...problem, errors: errors.filter(({ pointer }, at) => errors.findIndex((one) => one.pointer === pointer) === at) };
}
