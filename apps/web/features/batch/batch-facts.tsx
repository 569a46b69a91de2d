import type { Batch } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Facts } from '../../ui/facts.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Species } from '../../ui/species.tsx';
import { Tag } from '../../ui/tag.tsx';

/**
 * How the batch stands by the books.
 *
 * @param isOpen whether the page of its place may be opened
 */
export function BatchFacts({ programme, batch, rootedMeans, isOpen = true }: { programme: string; batch: Batch; rootedMeans: string; isOpen?: boolean }) {
  const { batches: said, entries } = useMessages();
  const t = useTranslations('batches');
  const { books, place, rows, stage, labels, taxon, stuckOn, container, medium, setAside } = batch;
  const { rootedNow, rootedEver: ever, lastSeen, notFound } = books;
  const rooted = rootedNow === undefined ? t('rootedUnknown', { ever }) : t('rootedSeen', { n: rootedNow, ever });
  return (
    <Section heading={said.state}>
      <Facts
        facts={[
          { term: said.facts.here, says: <strong className="text-lg">{t('plants', { n: books.balance })}</strong> },
          ...(setAside.length > 0 ? [{ term: said.facts.setAside, says: <ul>{setAside.map(({ requestId, who, n }) => <li key={requestId}><RowLink href={pageOf(programme, 'requests', requestId)}>{t('setAsideFor', { n, who })}</RowLink></li>)}</ul> }] : []),
          ...(stage === 'cutting' ? [{ term: said.facts.rooted, says: <>{rooted} <span className="block text-sm text-ink-soft">{t('rootedMeans', { sentence: rootedMeans })}</span></> }] : []),
          { term: said.facts.lastSeen, says: lastSeen && (stage === 'cutting' && lastSeen.day === stuckOn ? t('seenWhenStuck', { day: sayDay(lastSeen.day) }) : t('seenOn', { day: sayDay(lastSeen.day), look: entries.looks[lastSeen.look] })) },
          ...(notFound > 0 ? [{ term: said.facts.notFound, says: notFound }] : []),
          { term: said.facts.place, says: place && <>{isOpen ? <RowLink href={pageOf(programme, 'places', place.id)}>{place.name}</RowLink> : place.name} {rows && t('rows', { rows })}</> },
          // A mixture has no day of its own: each of its parts has, and leads there. It has a species if all of them are of one.
          ...(batch.isMixed ? [] : [{ term: said.facts.stuckOn, says: stuckOn && sayDay(stuckOn) }]),
          ...(batch.isMixed && !taxon ? [] : [{ term: said.facts.species, says: taxon && <Species name={taxon.name} /> }]),
          ...(container ? [{ term: said.facts.container, says: container }] : []),
          ...(medium ? [{ term: said.facts.medium, says: medium }] : []),
          ...(labels.length > 1 ? [{ term: said.facts.labels, says: <span className="flex flex-wrap gap-2">{labels.map((label) => <Tag key={label}>{label}</Tag>)}</span> }] : []),
        ]}
      />
    </Section>
  );
}
