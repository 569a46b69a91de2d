'use server';

import { getTranslations } from 'next-intl/server';
import { labelBearer } from '../../lib/label-bearer.ts';
import { wayToBearer } from '../../lib/way-to-bearer.ts';

export interface LabelFound {
  readonly isTaken: boolean;
  readonly words: string;
  readonly isUnknown?: boolean;
  /** Where it leads, if it leads anywhere. */
  readonly href?: string;
}

/** What a scanned label is on, and the way there. */
export async function findLabel(programme: string, code: string): Promise<LabelFound> {
  const [bearer, t] = await Promise.all([labelBearer(programme, code), getTranslations('scan')]);
  if (!bearer) return { isTaken: false, isUnknown: true, words: t('unknown') };
  const what = bearer.is === 'batch' ? t('found.batch', { label: bearer.batch.label ?? bearer.code }) : t(`found.${bearer.is}`);
  return { isTaken: true, words: `${what}. ${t('opens')}`, href: wayToBearer(programme, bearer) };
}
