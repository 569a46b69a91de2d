import type { Forecast } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { useId } from 'react';
import { monthAndYear } from '../../lib/calendar.ts';
import { percent } from '../../lib/percent.ts';
import { HowWorked } from '../../ui/how-worked.tsx';
import { More } from '../../ui/more.tsx';
import { RangeChart } from '../../ui/range-chart.tsx';
import { calibrationSentence, forecastSentence } from './forecast-said.ts';
import { ForecastTable } from './forecast-table.tsx';

type OfSpecies = Forecast['species'][number];

/** Plants in pots month by month, species by species: sentence, chart, how such forecasts did, tables. */
export function ForecastFigures({ forecast, csv, isNamed }: { forecast: Forecast; csv: string; isNamed: boolean }) {
  const { forecast: said } = useMessages();
  const here = forecast.species.filter(({ here: { cuttings, liners, potted } }) => cuttings + liners + potted > 0);
  if (here.length === 0) return <p className="text-ink-soft">{said.nothing}</p>;
  return (
    <div className="grid gap-10">
      {here.map((species) => <ForecastFigure key={species.taxonId} species={species} isNamed={isNamed} />)}
      <a href={csv} className="not-on-paper inline-flex min-h-8 items-center text-sm underline">{said.csv}</a>
    </div>
  );
}

const EVERY_MONTHS = 3;

function ForecastFigure({ species, isNamed }: { species: OfSpecies; isNamed: boolean }) {
  const { forecast: said } = useMessages();
  const t = useTranslations('forecast');
  const describedBy = useId();
  const { months, history, prior, commonName, taxon } = species;
  const sentence = forecastSentence(t, species);
  const marks = months.flatMap(({ on }, at) => (at % EVERY_MONTHS === 0 ? [{ at, words: monthAndYear(Number(on.slice(0, 4)), Number(on.slice(5, 7)) - 1) }] : []));
  return (
    <figure>
      <figcaption id={describedBy} className="mb-4 max-w-prose">
        <p className="mb-2">{isNamed ? t('named', { name: commonName ?? taxon, sentence }) : sentence}</p>
        <p className="text-ink-soft">{[said.range, history.decided === 0 ? said.noHistory : calibrationSentence(t, species)].join(' ')}</p>
      </figcaption>
      <RangeChart title={isNamed ? t('named', { name: commonName ?? taxon, sentence: said.title }) : said.title} describedBy={describedBy} points={months.map((range, at) => ({ ...range, at }))} marks={marks} />
      <div className="mt-4 text-sm">
        <More words={said.table}><ForecastTable species={species} /></More>
        <HowWorked said={{ ...said.worked, from: t('worked.from', { stickings: history.stickings, decided: history.decided, prior: prior.plants, mean: percent(prior.mean), source: prior.basis === 'species-row' ? prior.source : said.common }) }} />
      </div>
    </figure>
  );
}
