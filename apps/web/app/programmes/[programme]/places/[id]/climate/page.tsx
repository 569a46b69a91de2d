import { Climate, Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { chartShape } from '../../../../../../features/climate/chart-shape.ts';
import { ClimateChart } from '../../../../../../features/climate/climate-chart.tsx';
import { DailyTable, LatestTable } from '../../../../../../features/climate/climate-tables.tsx';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { buttonClass } from '../../../../../../ui/button-class.ts';
import { ButtonLink } from '../../../../../../ui/button-link.tsx';
import { Empty } from '../../../../../../ui/empty.tsx';
import { INPUT } from '../../../../../../ui/form/input-class.ts';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

interface ClimatePageProps {
  readonly params: Promise<{ programme: string; id: string }>;
  readonly searchParams: Promise<{ from?: string; until?: string }>;
}

export const generateMetadata = titled(({ climate }) => climate.title);

export default async function ClimatePage({ params, searchParams }: ClimatePageProps) {
  const [{ programme, id }, asked] = await Promise.all([params, searchParams]);
  const query = new URLSearchParams(Object.entries({ from: asked.from, until: asked.until }).filter((pair): pair is [string, string] => Boolean(pair[1])));
  const [place, { from, until, days, latest }, { zone, isDesk }, { climate: said, places }, t] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), read(`${apiOf(programme, 'places', id, 'climate')}?${query}`, Climate), workplaceOf(programme), getMessages(), getTranslations('climate'),
  ]);
  const shapes = [
    { what: said.temperature, shape: chartShape(from, until, days.flatMap(({ day, temperatureC: spread }) => (spread ? [{ day, spread }] : []))) },
    { what: said.humidity, shape: chartShape(from, until, days.flatMap(({ day, humidityPercent: spread }) => (spread ? [{ day, spread }] : []))) },
  ];
  const range = new URLSearchParams({ from, until });
  const csv = `${apiOf(programme, 'places', id, 'climate.csv')}?${range}`;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'places'), words: places.title }, { href: pageOf(programme, 'places', id), words: place.name }]} />
      <PageHeading lead={said.lead} act={<><ButtonLink href={pageOf(programme, 'places', id, 'climate', 'new')}>{said.add}</ButtonLink>{days.length > 0 && <a className={buttonClass('quiet')} href={csv} download>{said.csv}</a>}</>}>
        {t('titleOf', { name: place.name })}
      </PageHeading>
      <form method="get" className="not-on-paper mb-8 flex flex-wrap items-end gap-3">
        {(['from', 'until'] as const).map((name) => (
          <label key={name}>
            <span className="block font-semibold">{said[name]}</span>
            <input type="date" name={name} defaultValue={{ from, until }[name]} className={INPUT} />
          </label>
        ))}
        <button className={buttonClass('quiet')}>{said.show}</button>
      </form>
      {days.length === 0 && <Empty>{said.empty}</Empty>}
      {days.length > 0 && (
        <div className="mb-12 grid gap-8">
          {shapes.map(({ what, shape }) => shape && <ClimateChart key={what} what={what} from={from} until={until} shape={shape} />)}
          <p className="text-sm text-ink-soft">{said.key}</p>
        </div>
      )}
      {days.length > 0 && <DailyTable days={days} />}
      {latest.length > 0 && <LatestTable latest={latest} zone={zone} setAsideAt={isDesk ? (readingId) => `${pageOf(programme, 'places', id, 'climate', readingId)}?${range}` : undefined} />}
    </>
  );
}
