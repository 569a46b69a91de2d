import type { CompareBy, ComparedGroup, ComparedPair } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Card } from '../../ui/card.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { CannotTell } from './cannot-tell.tsx';
import { groupName } from './group-name.ts';
import { pairWords, times } from './pair-words.ts';

interface PairCardProps {
  readonly pair: ComparedPair;
  readonly first: ComparedGroup;
  readonly second: ComparedGroup;
  readonly by: CompareBy;
  /** Pairs that are asked at once. */
  readonly pairs: number;
  /** Where the trial of these two is laid out; nothing where none can be. */
  readonly trial: string | undefined;
}

/** Two groups side by side: one sentence, then what stands behind it. */
export function PairCard({ pair, first, second, by, pairs, trial }: PairCardProps) {
  const words = useMessages();
  const t = useTranslations('comparison');
  const [one, other] = [first, second].map((group) => groupName(group, by, words));
  const told = { first: t(`of.${by}`, { name: one ?? '' }), second: t(`of.${by}`, { name: other ?? '' }) };
  return (
    <Card>
      <h3 className="mb-2 text-lg">{t('pairs.title', { first: one ?? '', second: other ?? '' })}</h3>
      <PairSentence pair={pair} first={first} second={second} told={told} pairs={pairs} />
      {pair.found && <Behind found={pair.found} told={told} pairs={pairs} />}
      <div className="mt-3"><CannotTell pair={pair} by={by} groups={[{ group: first, words: told.first }, { group: second, words: told.second }]} /></div>
      {trial && <p className="not-on-paper mt-2"><RowLink href={trial}>{words.comparison.pairs.trial}</RowLink></p>}
    </Card>
  );
}

interface Told {
  readonly first: string;
  readonly second: string;
}

function PairSentence({ pair, first, second, told, pairs }: Pick<PairCardProps, 'pair' | 'first' | 'second' | 'pairs'> & { told: Told }) {
  const t = useTranslations('comparison.pairs');
  const said = pairWords(pair, first, second);
  const sentence = (): string => {
    switch (said.says) {
      case 'more': case 'fewer': return t(said.says, { ...told, n: said.n, least: said.least, most: said.most });
      case 'unsure': return t('unsure', { ...told, fewer: said.fewer, more: said.more });
      case 'byLuck': return t('byLuck', { ...told, n: said.n, way: said.way, pairs });
      case 'allAlike': return t('allAlike', { what: said.what });
      case 'tooEarly': {
        const which = said.which === 'both' ? [told.first, told.second].join(' / ') : told[said.which];
        return [t('tooEarly', { which }), said.day && t('lookAgain', { day: sayDay(said.day) })].filter(Boolean).join(' ');
      }
      default: return t(said.says);
    }
  };
  return <p className="max-w-prose text-lg">{sentence()}</p>;
}

const BY_WORDS = { 'one-tree': 'oneTree', 'within-trees': 'withinTrees', 'between-trees': 'betweenTrees', 'allowing-for': 'allowingFor' } as const;

function Behind({ found: { by, odds, chanceOfAll, donors }, told, pairs }: { found: NonNullable<ComparedPair['found']>; told: Told; pairs: number }) {
  const t = useTranslations('comparison.pairs');
  const { ratio = null, lower = null, upper = null } = odds ?? {};
  return (
    <div className="mt-2 grid max-w-prose gap-1 text-ink-soft">
      {ratio !== null && <p>{t('odds', { ...told, times: times(ratio), limits: lower !== null && upper !== null ? 'yes' : 'no', lower: times(lower ?? 0), upper: times(upper ?? 0) })}</p>}
      {chanceOfAll !== null && <p>{chanceOfAll < 0.001 ? t('luckRare', { pairs }) : t('luck', { chance: (chanceOfAll * 100).toFixed(chanceOfAll < 0.1 ? 1 : 0), pairs })}</p>}
      <p>{t('trees', { by: BY_WORDS[by], n: donors })} {by === 'one-tree' && t('oneTree')}</p>
    </div>
  );
}
