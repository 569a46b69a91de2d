import type { ReadingLine, SiteLines, SiteReading, TimeAxis } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

/** Headings say what stands below them; shares are between 0 and 1. */
export const linesAsCsv = (lines: readonly ReadingLine[], asOf: string): string =>
  csvOf(
    ['stand', 'species', 'donor trees came', 'donor trees left', 'donor trees at risk', 'plants here', 'of those planted out', 'undecided share of cuttings',
      ...['cutting', 'liner', 'potted', 'planted'].flatMap((stage) => [`plants came to ${stage}`, `donor trees came to ${stage}`]), 'as of'],
    lines.map(({ name, taxon, donors, atRisk, here, planted, undecidedShare, stages }) => [
      name, taxon, donors.came, donors.left, atRisk, here, planted, undecidedShare ?? undefined, ...stages.flatMap(({ plants, donors: trees }) => [plants, trees]), asOf,
    ]),
  );

/** Incidents stand on the line of the step in which they began. */
export const timeAxisAsCsv = ({ points, incidents }: TimeAxis): string =>
  csvOf(
    ['day', 'cuttings', 'young plants', 'potted', 'planted', 'batches counted or checked since', 'incidents begun since'],
    points.map((point, at) => [
      point.day, point.cutting, point.liner, point.potted, point.planted, point.looked,
      incidents.filter(({ from }) => from <= point.day && from > (points[at - 1]?.day ?? '')).map(({ what, place, from }) => `${from} ${what} ${place}`).join('; '),
    ]),
  );

export const sitesAsCsv = ({ sites, asOf }: SiteLines): string =>
  csvOf(
    ['site', 'trees came', 'alive when last seen', 'not found at the last check', 'lost', 'donor trees', 'last checked', 'as of'],
    sites.map(({ name, came, alive, notFound, lost, donors, lastCheckedOn }) => [name, came, alive, notFound, lost, donors, lastCheckedOn ?? undefined, asOf]),
  );

export const siteAsCsv = ({ donors, site, asOf }: SiteReading): string =>
  csvOf(
    ['site', 'donor tree', 'stand', 'species', 'trees came', 'alive when last seen', 'not found at the last check', 'died', 'missing', 'thrown out or given away', 'as of'],
    donors.map(({ donor, stand, taxon, came, alive, notFound, died, unaccounted, left }) => [
      site.name, donor?.label, stand ?? undefined, taxon, came, alive, notFound, died, unaccounted, left, asOf,
    ]),
  );
