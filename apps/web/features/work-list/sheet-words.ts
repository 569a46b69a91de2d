import type { useTranslations } from 'next-intl';
import type { SheetWords } from './line-words.ts';

type Say = ReturnType<typeof useTranslations<'workLists'>>;

export const sheetWords = (t: Say): SheetWords => ({
  plants: (n) => t('sheet.plants', { n }),
  rooted: (n) => t('sheet.rooted', { n }),
  rootedOn: (n, day) => t('sheet.rootedOn', { n, day }),
  rows: (rows) => t('sheet.row', { n: rows.includes('-') ? 2 : 1, rows }),
  stuck: (day) => t('sheet.stuck', { day }),
  held: t('sheet.held'),
  mixed: t('sheet.mixed'),
});
