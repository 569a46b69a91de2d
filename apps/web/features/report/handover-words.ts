import type { HandoverReport } from '@sprigline/contract';
import type { Messages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';

type T = ReturnType<typeof useTranslations<'reports.handover'>>;
type Counts = ReturnType<typeof useTranslations<'due.counts'>>;

export interface HandoverList {
  readonly heading: string;
  readonly none: string;
  readonly says: readonly string[];
}

/** Where something stands, or something is noted: of a hundred empty trays nothing is to be handed over. */
export const placesInUse = ({ places }: HandoverReport) => places.filter(({ batches, note }) => batches > 0 || note);

/** What is to be handed over in sentences, for screen and paper. */
export function handoverLists(report: HandoverReport, t: T, counts: Counts, { reports: { handover: said }, words: { role: roles, stage: stages }, requests: { states }, entries: { flagShort } }: Messages): HandoverList[] {
  const flagWords: Readonly<Record<string, string>> = flagShort;
  const { due } = report;
  return [
    {
      heading: said.due, none: said.noDue,
      says: [
        ...due.places.map(({ walk, path, day, kinds }) => t('dueOf', { place: [...path, walk.name].join(' › '), what: kinds.map(({ kind, n }) => counts(kind, { n })).join(', '), day: sayDay(day) })),
        ...(due.more > 0 ? [t('dueMore', { n: due.more })] : []),
      ],
    },
    {
      heading: said.promised, none: said.nonePromised,
      says: report.promised.map(({ who, plants, taxon, stage, state, covered, wantedOn }) =>
        t('promisedOf', { who, n: plants, taxon, stage: stages[stage], state: states[state], covered, wanted: wantedOn === null ? 'none' : sayDay(wantedOn) })),
    },
    { heading: said.reviews, none: said.noReviews, says: report.reviews.map(({ code, n, oldest }) => t('reviewOf', { n, what: flagWords[code] ?? code, day: sayDay(oldest) })) },
    { heading: said.unstuck, none: said.noUnstuck, says: report.unstuck.map(({ stand, wentOn, cuttings }) => t('unstuckOf', { stand, day: sayDay(wentOn), n: cuttings })) },
    {
      heading: said.permissions, none: report.permissions === null ? said.permissionsHidden : said.noPermissions,
      says: (report.permissions ?? []).map(({ land, grantedBy, used, quota, validUntil, plantsOwedBack }) =>
        t('permissionOf', { land, by: grantedBy, used, quota: quota === null ? 'none' : String(quota), until: validUntil === null ? 'none' : sayDay(validUntil), owed: plantsOwedBack })),
    },
    { heading: said.people, none: '', says: report.people.map(({ name, role }) => `${name}: ${role === null ? said.noRole : roles[role]}`) },
    {
      heading: said.recipes, none: '',
      says: report.recipes.map(({ name, version, madeOn, hormone, hormonePpm, medium, wound, steps }) =>
        [t('recipeOf', { name, version, day: sayDay(madeOn) }), hormone && [hormone, hormonePpm && `${hormonePpm} ppm`].filter(Boolean).join(' '), medium, wound, steps].filter(Boolean).join('; ')),
    },
    { heading: said.keep, none: '', says: Object.values(said.keepItems) },
  ];
}
