'use server';

import { getTranslations } from 'next-intl/server';
import type { Route } from 'next';
import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, text } from '../../lib/form-values.ts';
import { lineField } from '../../lib/line-field.ts';
import { writeLines } from '../../lib/lines.ts';
import { placesOf } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { isAtSite } from '../../lib/place-path.ts';
import { Refused } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';
import { scannedSaid } from './scanned-said.ts';

/** Writes where everything scanned stands now, each for itself: a refused one keeps no other out, and none is written twice. */
export async function writeScanned(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const place = (await placesOf(programme)).find(({ id }) => id === text(form, 'placeId'));
  const said = scannedSaid(form, place !== undefined && isAtSite(place));
  const state = await submit(before, form, async () => {
    if (said.length === 0 || !place) throw await unsaid(said.length === 0 ? 'nothingScanned' : 'whereTo');
    await writeLines(programme, said, isTicked(form, 'confirm'), () => 'n', ['placeId', 'observedOn', 'note']);
  });
  if (state.isDone) redirect(`${pageOf(programme, 'scan', 'many')}?${new URLSearchParams({ done: String(said.length), sent: text(form, 'listId') ?? '' })}` as Route);
  return state;
}

async function unsaid(why: 'nothingScanned' | 'whereTo'): Promise<Refused> {
  const words = (await getTranslations('scan.moving'))(why);
  return new Refused({ type: 'about:blank', title: words, detail: words, status: 422, errors: [{ pointer: why === 'whereTo' ? '#/placeId' : `#/${lineField(0, 'n')}`, detail: words }] });
}
