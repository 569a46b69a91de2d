import type { StickingOpinion as Told } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { percent } from '../../lib/percent.ts';
import { OpinionList } from './opinion-list.tsx';

/** Cuttings of one stand, species and day: what to expect of them, by when, and what is unusual. */
export function StickingOpinion({ told }: { told: Told }) {
  const t = useTranslations('secondOpinion');
  const { stand, taxon, stuckOn, cuttings, donors, expected, firstCheckOn, verdictOn, opinions, species } = told;
  const day = sayDay(stuckOn);
  return (
    <article className="mb-8">
      <h3 className="mb-2 text-lg font-semibold">{stand ? t('groupOf', { taxon: taxon.name, stand: stand.name, day }) : t('group', { taxon: taxon.name, day })}</h3>
      <div className="mb-4 grid max-w-prose gap-1">
        <p>{t('sum', { cuttings, donors })} {t('expected', {
          plants: Math.round(expected.plants.expected), lower: expected.plants.lower, upper: expected.plants.upper,
          donors: Math.round(expected.donors.expected), donorsLower: expected.donors.lower, donorsUpper: expected.donors.upper,
        })}</p>
        <p>{t('dates', { first: sayDay(firstCheckOn), verdict: sayDay(verdictOn) })}</p>
      </div>
      <OpinionList opinions={opinions} species={species?.name} />
      <Worked told={told} />
    </article>
  );
}

function Worked({ told: { chance, species } }: { told: Told }) {
  const { secondOpinion: { worked: said } } = useMessages();
  const t = useTranslations('secondOpinion');
  const { prior } = chance;
  const basis = t(`basis.${prior.basis}`, { species: species?.name ?? '' });
  return (
    <details className="mt-4">
      <summary className="min-h-8 cursor-pointer py-1 underline">{said.title}</summary>
      <div className="mt-1 grid max-w-prose gap-1.5 text-sm text-ink-soft">
        <p>{t('worked.method', { prior: prior.plants })}</p>
        <p>{t('worked.from', { mean: percent(chance.mean), goneOn: chance.goneOn, settled: chance.settled, donors: chance.donors, weight: percent(chance.ownWeight), held: percent(prior.mean), basis })}</p>
        <p>{t('worked.source', { source: species?.source ?? said.noSource })}</p>
        <p>{said.wrong}</p>
      </div>
    </details>
  );
}
