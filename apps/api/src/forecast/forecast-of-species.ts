import type { Forecast } from '@sprigline/contract';
import { calibrationOf, dayAfter, dayNumber, dayOfNumber, type DatedStay, pastForecasts, rootingPrior, speciesRow, stageStays, stockForecast } from '@sprigline/domain';
import type { StageBooks } from './stage-books.queries.ts';

const MONTH = 365.25 / 12;
const MONTHS_AHEAD = 18;
/** Every quarter of the last three years, looking half a year ahead. */
const PAST = { every: 91, times: 12, ahead: 182 };
/** Fewer past forecasts say nothing of how good they are. */
const FORECASTS_NEEDED = 4;

/** Species by species, what is in pots when, of what is here today; and how such forecasts did before. */
export function forecastOfSpecies(books: readonly StageBooks[], asOf: string): Forecast['species'] {
  const taxa = [...new Set(books.map(({ taxonId }) => taxonId))];
  return taxa.map((taxonId) => ofOne(books.filter((one) => one.taxonId === taxonId), asOf)).sort((a, b) => a.taxon.localeCompare(b.taxon));
}

function ofOne(books: readonly StageBooks[], asOf: string): Forecast['species'][number] {
  const [first] = books;
  const { taxonId = '', taxon = '', commonName = null } = first ?? {};
  const prior = rootingPrior(speciesRow(taxon));
  const history = books.flatMap(staysOf);
  const asked = books.filter(({ isAsked }) => isAsked).flatMap(staysOf);
  const here = asked.filter(({ isOpen }) => isOpen);
  const today = dayNumber(asOf);
  const ahead = Array.from({ length: MONTHS_AHEAD + 1 }, (_, month) => Math.round(month * MONTH));
  const past = pastForecasts(asked, history, prior, today, Array.from({ length: PAST.times }, (_, at) => today - PAST.ahead - at * PAST.every).reverse(), PAST.ahead);
  const sumOf = (state: DatedStay['state']): number => here.reduce((sum, stay) => (stay.state === state ? sum + stay.plants : sum), 0);
  const { ratio, ...did } = calibrationOf(past);
  return {
    taxonId, taxon, commonName,
    here: { cuttings: sumOf('cutting'), liners: sumOf('liner'), potted: sumOf('potted') },
    months: stockForecast(here, history, prior, today, ahead).map(({ days, ...range }) => ({ ...range, on: dayAfter(asOf, days) })),
    history: { stickings: books.length, decided: history.reduce((sum, { state, to, plants }) => (state === 'cutting' && to !== undefined ? sum + plants : sum), 0) },
    prior: { plants: prior.plants, mean: prior.mean, basis: prior.basis, source: prior.source },
    past: past.map(({ madeOn, days, ...told }) => ({ ...told, madeOn: dayOfNumber(madeOn), on: dayOfNumber(madeOn + days) })),
    calibration: past.length < FORECASTS_NEEDED ? null : { ...did, ratio: ratio ?? null },
  };
}

const staysOf = ({ batches, days, stuckOn, unit }: StageBooks): DatedStay[] => stageStays(batches, days).map((stay) => ({ ...stay, unit, stuckOn: dayNumber(stuckOn) }));
