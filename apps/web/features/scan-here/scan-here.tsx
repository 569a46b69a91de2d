'use client';

import { useMessages, useTranslations } from 'next-intl';
import { useEffect, useRef } from 'react';
import { fieldAddress } from '../../lib/field-address.ts';
import { pageOf } from '../../lib/page-address.ts';
import { PageHeading } from '../../ui/page-heading.tsx';
import { type ScanAnswer, Scanner } from '../../ui/scanner/scanner.tsx';
import { askElsewhere } from './ask-elsewhere.ts';
import { foundHere, type Here } from './found-here.ts';
import { useHere } from './use-here.ts';
import { pageHere, whereItLeads } from './where-it-leads.ts';

interface ScanHereProps {
  readonly programme: string;
  /** The walk that one came from, and goes back to. */
  readonly walkId: string | undefined;
  /** The address that labels are printed with. */
  readonly address: string;
}

/** A label is read and leads to what it is on, out of what lies on this phone. */
export function ScanHere({ programme, walkId, address }: ScanHereProps) {
  const t = useTranslations('scan.here');
  const field = useTranslations('field');
  const { scanner } = useMessages().scan;
  const here = useHere(programme);
  // What is read while the phone still looks into its packs waits for them.
  const known = useRef(here);
  useEffect(() => { known.current = here; });

  if (here === undefined) return <p role="status">{field('opening')}</p>;
  const walk = typeof here === 'object' ? here.walks.find(({ id }) => id === walkId) : undefined;
  const back = walk ? fieldAddress(programme, walk.kind === 'places' ? 'round' : 'list', walk.id) : fieldAddress(programme);

  async function open(code: string): Promise<ScanAnswer> {
    if (typeof known.current !== 'object') return { isTaken: false, words: t('notPacked') };
    const { href, ...answer } = await answerTo(code, known.current);
    if (href !== undefined) window.location.assign(href);
    return answer;
  }

  async function answerTo(code: string, packed: Here): Promise<ScanAnswer & { readonly href?: string }> {
    const found = foundHere(code, packed, walkId);
    if (found.is !== 'code' && found.is !== 'unknown') return { isTaken: true, words: t(`found.${found.is}`, { label: found.label }), href: whereItLeads(programme, found) };
    const elsewhere = await askElsewhere(programme, code);
    if (typeof elsewhere === 'object' && elsewhere.is !== 'unclaimed') return { isTaken: true, words: t('elsewhere'), href: elsewhereHref(programme, elsewhere) };
    if (typeof elsewhere === 'object' || (found.is === 'code' && elsewhere === 'unheard')) return { isTaken: true, words: t('found.new'), href: fieldAddress(programme, 'claim', code, ...(walkId === undefined ? [] : [walkId])) };
    return { isTaken: false, isUnknown: true, words: t(elsewhere === 'unheard' ? 'unknownHere' : 'unknown') };
  }

  return (
    <>
      <p><a href={back} className="inline-flex min-h-14 items-center underline">{walk ? t('toWalk') : field('title')}</a></p>
      <PageHeading lead={t('lead')}>{t('title')}</PageHeading>
      <Scanner words={scanner} addresses={[address]} onCode={open} onPage={(path) => window.location.assign(pageHere(programme, path) ?? path)} />
    </>
  );
}

/** The desk's page of what was not packed: there is a signal, or nobody would know. */
const elsewhereHref = (programme: string, { is, id }: { is: string; id: string }): string =>
  is === 'batch' ? pageOf(programme, 'batches', id) : is === 'place' ? fieldAddress(programme, 'round', id) : pageOf(programme, 'donor-trees', id);
