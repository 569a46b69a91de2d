import type { StandAtSite } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Card } from '../../ui/card.tsx';
import { Species } from '../../ui/species.tsx';
import { percent, percentRange } from '../../lib/percent.ts';
import { ShareRibbon } from './share-ribbon.tsx';
import { SiteBar } from './site-bar.tsx';

/** What came to a site from one stand: what lives, both rates, and of how many trees it is. */
export function SiteStand({ of: { stand, taxon, commonName, planted, diversity } }: { of: StandAtSite }) {
  const { dashboards: { site: said } } = useMessages();
  const t = useTranslations('dashboards.site');
  const lost = Object.values(planted.died).reduce((sum, n) => sum + n, 0) + planted.unaccounted + planted.thrownOut;
  const came = planted.reached - Math.min(0, planted.mixedAway);
  return (
    <Card>
      <h3 className="text-xl">{stand ?? said.unknownStand}</h3>
      <p className="mb-3 text-ink-soft">{taxon === '' ? said.severalSpecies : <>{commonName && `${commonName}, `}<Species name={taxon} /></>}</p>
      <p>{t('says', { came, alive: planted.here - planted.notFound, lost, notFound: planted.notFound })}</p>
      <SiteBar alive={planted.here - planted.notFound} notFound={planted.notFound} lost={lost} />
      <Rates planted={planted} />
      <p className="mt-3">
        {t('genes', { donors: diversity.donors, effective: diversity.effective?.order2.toFixed(1) ?? '' })} {diversity.largest && t('largest', { label: diversity.largest.label, share: percent(diversity.largest.share) })}
      </p>
      {diversity.perDonor.length > 0 && <div className="mt-2"><ShareRibbon perDonor={diversity.perDonor} /></div>}
    </Card>
  );
}

/** Where nobody was missed there is one rate; else both. Never a rate of trees that nobody has looked at. */
function Rates({ planted: { survival, notFound, wilson } }: Pick<StandAtSite, 'planted'>) {
  const { readings: { stand: rates } } = useMessages();
  const t = useTranslations('dashboards.site');
  if (survival?.rate === undefined) return null;
  const rate = percent(survival.rate);
  return (
    <>
      <p className="mt-3 font-semibold">{notFound > 0 ? t('rates', { rate, lower: percent(survival.range.lower) }) : t('rate', { rate })}</p>
      {wilson && <p className="text-sm text-ink-soft">{rates.alone}: {percentRange(wilson)}</p>}
    </>
  );
}
