import { RequestInList } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { sayDay } from '../../lib/calendar.ts';
import { partnersOf, taxaOf, taxonName } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { readPart } from '../../lib/pages.ts';
import { apiOf } from '../../lib/workplace.ts';
import { Flag } from '../../ui/flag.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';

const AT_A_GLANCE = 4;

/** What is promised and has not gone, the day on which it is wanted first; whether enough is set aside. */
export async function Promised({ programme }: { programme: string }) {
  const [{ items, after }, partners, taxa, { home: said }, t] = await Promise.all([
    readPart(`${apiOf(programme, 'requests')}?open=yes&limit=100`, z.array(RequestInList)), partnersOf(programme), taxaOf(programme), getMessages(), getTranslations('home'),
  ]);
  const promised = items.filter(({ state }) => state === 'promised' || state === 'packed').sort((a, b) => (a.wantedOn ?? '9').localeCompare(b.wantedOn ?? '9'));
  const hasMore = after !== undefined || promised.length > AT_A_GLANCE || items.length > promised.length;
  return (
    <Section heading={said.promised}>
      {promised.length === 0 && <p className="text-ink-soft">{said.nonePromised}</p>}
      <ul className="grid gap-2">
        {promised.slice(0, AT_A_GLANCE).map(({ id, partnerId, outside, plants, taxonId, wantedOn, covered }) => (
          <li key={id} className="flex flex-wrap items-center gap-x-3">
            <RowLink href={pageOf(programme, 'requests', id)}>{outside ?? partners.find((partner) => partner.id === partnerId)?.name ?? '…'}</RowLink>
            <span className="text-sm">{t('promisedPlants', { n: plants, species: taxonName(taxa, taxonId) })}{wantedOn && `, ${t('wantedOn', { day: sayDay(wantedOn) })}`}</span>
            {covered < plants && <Flag tone="look">{t('stillMissing', { n: plants - covered })}</Flag>}
          </li>
        ))}
      </ul>
      {hasMore && <p className="mt-2"><RowLink href={pageOf(programme, 'requests')}>{t('allRequests', { n: items.length })}</RowLink></p>}
    </Section>
  );
}
