import type { DueItem } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';

/** Where the thing is done: straight into the round or the act. */
export function wayTo(programme: string, { kind, place, batch }: DueItem): string {
  switch (kind) {
    case 'round':
    case 'siteCheck':
      return pageOf(programme, 'places', place.id, 'round');
    case 'verdict':
      return pageOf(programme, 'batches', batch?.id ?? '', 'call');
    case 'movingOn':
      return pageOf(programme, 'batches', batch?.id ?? '', 'lift');
    default:
      return pageOf(programme, 'batches', batch?.id ?? '', 'count');
  }
}

/** Why something is due on its day, in one sentence. */
export function useWhy(): (item: DueItem) => string {
  const t = useTranslations('due');
  const basis = useTranslations('due.basis');
  return ({ kind, since, wait }) =>
    `${t(`why.${kind}`, { since: sayDay(since), n: wait.days ?? 0 })} (${basis(wait.basis, { stickings: wait.stickings ?? 0 })})`;
}

/** What a person calls the thing: a batch by its label, a place by its name. */
export function useThing(): (item: DueItem) => string {
  const checks = useMessages().due.checks;
  const t = useTranslations('due');
  return ({ kind, place, batch, season, check }) => {
    if (batch) return batch.label ?? `…${batch.id.slice(-6)}`;
    if (kind === 'siteCheck' && check && season) return `${place.name}: ${checks[check]}, ${t('planted', { season: season.name })}`;
    return place.name;
  };
}
