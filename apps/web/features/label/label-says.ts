import type { LabelLine } from '@sprigline/contract';
import { shownLabelCode } from '@sprigline/domain';
import type { getTranslations } from 'next-intl/server';
import type { Messages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import type { LabelSays } from './label-words.ts';

export interface LabelVoice {
  readonly t: Awaited<ReturnType<typeof getTranslations<'labels'>>>;
  readonly stages: Messages['words']['stage'];
}

/** What stands on a label, the most important first. No place of a wild tree: labels get lost. */
export function labelSays({ is, code, donorTree, taxon, stand, stage, stuckOn, openedOn, path }: LabelLine, { t, stages }: LabelVoice): LabelSays {
  const shown = shownLabelCode(code ?? '');
  const told = (...words: (string | null | undefined)[]) => words.filter((one): one is string => Boolean(one));
  if (is === 'place') return { code: shown, title: path.at(-1), more: told(path.slice(0, -1).join(' › ')) };
  if (is === 'donorTree') return { code: shown, title: donorTree ?? undefined, more: told(taxon, stand) };
  const since = stage !== 'cutting' && openedOn ? t('since', { day: sayDay(openedOn) }) : undefined;
  const kind = stage && [stages[stage], since].filter(Boolean).join(' ');
  return { code: shown, title: donorTree ?? t('unknownTree'), more: told(stuckOn && t('stuck', { day: sayDay(stuckOn) }), kind, taxon) };
}
