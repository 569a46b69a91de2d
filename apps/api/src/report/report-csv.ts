import type { FunderReport, FunderRow, HandoverReport, LandownerReport } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

/** A row a donor tree; the last one is their sum. */
export function landownerAsCsv({ trees, sum, asOf, subject }: LandownerReport): string {
  const row = (one: LandownerReport['sum']) => [
    one.taken, one.stuck, one.received, one.found, one.rooted, one.potted, one.planted, one.lost, one.givenOut, one.mixedAway, one.alive,
    one.aliveBy.cutting, one.aliveBy.liner, one.aliveBy.potted, one.aliveBy.planted,
  ];
  return csvOf(
    ['donor tree', 'stand', 'species', 'cuttings taken', 'stuck', 'came in otherwise', 'found', 'went on as young plants', 'potted', 'planted', 'lost', 'given out', 'in mixed batches',
      'alive', 'alive cuttings', 'alive young plants', 'alive potted', 'alive planted', 'planted where', 'about', 'as of'],
    [
      ...trees.map((tree) => [tree.label, tree.stand, tree.taxon, ...row(tree), tree.sites.map(({ name, planted }) => `${name}: ${planted}`).join('; '), subject.name, asOf]),
      ['all', '', '', ...row(sum), '', subject.name, asOf],
    ],
  );
}

/** A row a site, season and species; then a row a species. Shares are between 0 and 1. */
export function funderAsCsv({ rows, totals, asOf }: FunderReport): string {
  const row = (one: Omit<FunderRow, 'site' | 'season' | 'taxon'>) => [
    one.planted, one.givenOut, one.notChecked, one.notLooked, one.alive, one.dead, one.notFound, one.rates?.low, one.rates?.high, one.rates?.wilsonLow.lower, one.rates?.wilsonLow.upper,
    one.rates?.wilsonHigh?.lower, one.rates?.wilsonHigh?.upper, one.byUnit?.unit, one.byUnit?.units, one.byUnit?.lower, one.byUnit?.upper, one.donors, one.plots, one.ageDays?.least, one.ageDays?.most,
    one.plantedOn?.first, one.plantedOn?.last, one.checkedOn?.first, one.checkedOn?.last, asOf,
  ];
  return csvOf(
    ['site', 'season of planting', 'species', 'planted', 'given out', 'never checked', 'left out of the last check', 'alive', 'dead', 'not found', 'rate if not found are dead', 'rate if not found are left out',
      'Wilson lower (dead)', 'Wilson upper (dead)', 'Wilson lower (left out)', 'Wilson upper (left out)', 'sampling unit', 'units', 'by unit lower', 'by unit upper', 'donor trees', 'plots',
      'age at check, least days', 'age at check, most days', 'planted first', 'planted last', 'checked first', 'checked last', 'as of'],
    [...rows.map((one) => [one.site, one.season, one.taxon, ...row(one)]), ...totals.map((one) => ['all sites', 'all seasons', one.taxon, ...row(one)])],
  );
}

/** What is to be handed over, as one list. */
export function handoverAsCsv(report: HandoverReport): string {
  const { asOf } = report;
  return csvOf(['part', 'what', 'how many', 'more', 'as of'], [
    ...report.places.map(({ name, depth, plants, note }) => ['place', `${'  '.repeat(depth)}${name}`, plants, note ?? '', asOf]),
    ...report.held.map(({ label, n, place, reason }) => ['held', label ?? '', n, `${place}: ${reason ?? ''}`, asOf]),
    ...report.reviews.map(({ code, n, oldest }) => ['to review', code, n, oldest, asOf]),
    ...report.due.places.map(({ walk, path, day, kinds }) => ['due', [...path, walk.name].join(', '), kinds.reduce((sum, { n }) => sum + n, 0), `${day}: ${kinds.map(({ kind, n }) => `${kind} ${n}`).join(', ')}`, asOf]),
    ...report.promised.map(({ who, taxon, stage, plants, wantedOn, state, covered }) => ['request', `${who}: ${taxon}, ${stage}`, plants, `${state}, ${covered} set aside${wantedOn === null ? '' : `, wanted by ${wantedOn}`}`, asOf]),
    ...report.unstuck.map(({ stand, wentOn, cuttings }) => ['not stuck yet', `${stand}, ${wentOn}`, cuttings, '', asOf]),
    ...(report.permissions ?? []).map(({ land, grantedBy, used, quota, validUntil }) => ['permission', `${land}, ${grantedBy}`, used, `of ${quota ?? 'any number'}, until ${validUntil ?? 'further notice'}`, asOf]),
    ...report.people.map(({ name, role }) => ['person', name, undefined, role ?? '', asOf]),
    ...report.recipes.map(({ name, version, medium }) => ['recipe', name, version, medium ?? '', asOf]),
  ]);
}
