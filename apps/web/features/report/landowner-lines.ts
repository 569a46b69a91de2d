import type { LandownerReport } from '@sprigline/contract';
import type { useTranslations } from 'next-intl';

/** The letter in sentences: what came of the trees in all, and what is owed. */
export function landownerLines({ sum, trees, owed }: LandownerReport, t: ReturnType<typeof useTranslations<'reports.landowner'>>): string[] {
  if (trees.length === 0) return [t('none')];
  return [
    t('sum', { taken: sum.taken, trees: trees.length, planted: sum.planted, alive: sum.alive }),
    ...(owed ? [t('owed', { plants: owed.plants, given: owed.givenBack === null ? 'none' : String(owed.givenBack) })] : []),
  ];
}
