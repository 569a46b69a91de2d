'use client';

import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { chime } from '../../lib/chime.ts';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { fieldAddress } from '../../lib/field-address.ts';
import { keepEntries } from '../../lib/phone/keep-entries.ts';
import { rememberUsed } from '../../lib/phone/last-used.ts';
import { canMakeStickingIds, stickingIdHere } from '../../lib/phone/sticking-id.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Caution } from '../../ui/caution.tsx';
import { Choose } from '../../ui/form/choose.tsx';
import { KeptBanner } from '../../ui/kept-banner.tsx';
import { PageHeading } from '../../ui/page-heading.tsx';
import { entryAt, type When } from './act.ts';
import { NotHere } from './not-here.tsx';
import { type StickTold, stuckSaid } from './stick.ts';
import { StickLine } from './stick-line.tsx';
import { StuckHere } from './stuck-here.tsx';
import { type FieldPackNow, useFieldPack } from './use-field-pack.ts';
import { momentOf, rememberWhen, whenBefore } from './when.ts';
import { WhenLine } from './when-line.tsx';

/** A sticking night: line after line, each kept at once. */
/** @param label that the first line is stuck under, such as one that was just scanned */
export function StickScreen({ programme, label, homeHref }: { programme: string; label: string | undefined; homeHref: string }) {
  const t = useTranslations('act');
  const field = useTranslations('field');
  const found = useFieldPack({ programme, isFresh: true });
  if (found === undefined) return <p role="status">{field('opening')}</p>;
  if (found === 'unknown') return <NotHere backHref={homeHref} />;
  return (
    <>
      <p><a href={homeHref} className="inline-flex min-h-14 items-center underline">{t('back')}</a></p>
      <PageHeading lead={t('stick.lead')}>{t('stick.title')}</PageHeading>
      {(found.pack.bundles ?? []).length === 0 && <p className="max-w-prose">{t('stick.none')}</p>}
      {canMakeStickingIds() ? <StickingNight programme={programme} label={label} found={found} /> : <p role="alert" className="max-w-prose font-semibold text-rust">{t('stick.insecure')}</p>}
    </>
  );
}

interface Kept {
  readonly entry: EntryToSend;
  readonly about: string;
  readonly state: 'busy' | 'kept' | 'undone' | 'failed';
}

function StickingNight({ programme, label, found }: { programme: string; label: string | undefined; found: FieldPackNow }) {
  const t = useTranslations('act');
  const { bundles = [], recipes = [], programme: { zone } } = found.pack;
  const [when, setWhen] = useState<When>(() => whenBefore(found.today, found.pack.workdays));
  const [recipe, setRecipe] = useState('');
  const [line, setLine] = useState(0);
  const [kept, setKept] = useState<Kept>();

  async function write(entry: EntryToSend, about: string, isUndone: boolean): Promise<boolean> {
    setKept({ entry, about, state: 'busy' });
    try {
      await keepEntries({ programme, about, reason: t('undoneReason') }, isUndone ? [] : [entry], isUndone ? { entries: [entry], versions: {}, ids: [entry.id] } : undefined);
      setKept({ entry, about, state: isUndone ? 'undone' : 'kept' });
      chime(isUndone ? 'undone' : 'kept');
      return true;
    } catch {
      // Full, or switched off: it is still on the screen, and nowhere else.
      setKept({ entry, about, state: 'failed' });
      return false;
    }
  }

  async function keep(told: StickTold, ids: { readonly entryId: string; readonly batchId: string }): Promise<void> {
    const about = bundles.find(({ id }) => id === told.bundleId)?.donorTree ?? '';
    const stickingId = await stickingIdHere(told.bundleId ?? '', when.day, recipe || undefined);
    const entry = entryAt(ids.entryId, when, momentOf(when, found.today, zone), stuckSaid(told, { batchId: ids.batchId, stickingId }, recipe || undefined));
    if (!(await write(entry, about, false))) return;
    // The next line is made anew: no number is carried over.
    setLine(line + 1);
    window.scrollTo(0, 0);
    await rememberUsed(await theStore(), programme, { placeId: told.placeId }).catch(() => undefined);
  }

  function lineOf({ entry: { saying }, about }: Kept): string {
    if (saying.kind !== 'stuck') return '';
    return t('stick.line', { n: saying.n, donor: about, tray: found.pack.places.find(({ id }) => id === saying.placeId)?.name ?? '' });
  }

  return (
    <div className="flex max-w-md flex-col gap-4 md:max-w-none">
      <KeptBanner state={kept?.state} title={t(kept?.state === 'undone' ? 'undone' : 'kept', { label: kept?.about ?? '' })} detail={kept && <p className="text-sm">{lineOf(kept)}</p>} undo={kept ? () => void write(kept.entry, kept.about, true) : undefined} next={label !== undefined && <a href={fieldAddress(programme, 'scan')} className={`${buttonClass('quiet')} w-full`}>{t('scanNext')}</a>} />
      <WhenLine {...found} when={when} change={(next) => { setWhen(next); rememberWhen(found.today, next); }} />
      <Choose label={t('stick.recipe')} value={recipe} choose={setRecipe} none={t('stick.noRecipe')} choices={recipes.map(({ versionId, name, version }) => ({ value: versionId, words: t('stick.recipeName', { name, version }) }))} />
      {bundles.length > 0 && <StickLine key={line} found={found} label={line === 0 ? label : undefined} keep={keep} />}
      <Caution>{t('stick.caution')}</Caution>
      <StuckHere programme={programme} found={found} undo={(entry, about) => void write(entry, about, true)} />
    </div>
  );
}
