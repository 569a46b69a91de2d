import { PartnerRelation } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Way } from '../../ui/way.tsx';
import type { Asked } from './batch-query.ts';

/** Narrows a partner's list by how batches concern them. @param at the site or plot whose batches are shown, if it is one */
export function PartnerWays({ programme, asked, at }: { programme: string; asked: Asked; at: string | undefined }) {
  const { ofOurs: said } = useMessages().batches;
  const t = useTranslations('batches.ofOurs');
  const list = pageOf(programme, 'batches');
  const chosen = asked.placeId || asked.standId || asked.donorTreeId ? undefined : (asked.relation ?? 'all');
  const ways = [{ name: 'all' as const, href: list }, ...PartnerRelation.options.map((name) => ({ name, href: `${list}?relation=${name}` }))];
  return (
    <nav aria-label={said.title} className="not-on-paper mb-6">
      <ul className="flex flex-wrap gap-2">
        {ways.map(({ name, href }) => (
          <li key={name}><Way href={href} aria-current={chosen === name ? 'true' : undefined} className={buttonClass(chosen === name ? 'main' : 'quiet')}>{said[name]}</Way></li>
        ))}
      </ul>
      {at && <p className="mt-3 font-semibold">{t('at', { place: at })}</p>}
    </nav>
  );
}
