import type { Opinion } from '@sprigline/contract';
import type { Messages, useTranslations } from 'next-intl';
import { percent } from './percent.ts';

type Said = Messages['secondOpinion'];
type Translate = ReturnType<typeof useTranslations<'secondOpinion'>>;

/** An opinion in words. */
export interface OpinionSaid {
  readonly key: Opinion['about'];
  readonly verdict: Opinion['verdict'];
  readonly about: string;
  readonly says: string;
  readonly why: string;
  readonly rests: string;
  /** What own cuttings of either kind did; empty where there are none. */
  readonly others: readonly string[];
  /** Which donor trees it concerns, where not all. */
  readonly trees: string | undefined;
}

/** @param species whose row was read */
export function opinionSaid({ about, verdict, basis, says, donors, facts, like, unlike }: Opinion, species: string | undefined, said: Said, t: Translate): OpinionSaid {
  const mixedUp = String(facts['mixedUpWith'] ?? '').split(' ').flatMap((one) => said.mixedUp[one as keyof Said['mixedUp']] ?? []).join('; ');
  const others = [like && t('like', { ...like, share: percent(like.goneOn / like.settled) }), unlike && t('unlike', { ...unlike, share: percent(unlike.goneOn / unlike.settled) })];
  const ends = { least: Number(facts['least'] ?? 0), most: Number(facts['most'] ?? 0) };
  const seen = ends.least === ends.most ? t('one', ends) : t('range', ends);
  return {
    key: about, verdict, about: said.about[about],
    // The API tells which words; each is in the message file, which a test looks through.
    says: verdict === 'not-told' ? '' : t(`says.${about}.${says}` as 'says.medium.unknown', { ...facts, mixedUp, seen, medium: String(facts['medium'] ?? '') }),
    why: said.matters[about], rests: t(`basis.${basis}`, { species: species ?? '' }),
    others: others.flatMap((one) => one ?? []),
    trees: donors.length === 0 ? undefined : t('trees', { trees: donors.join(', ') }),
  };
}

/** What nobody wrote down, named in one sentence; nothing where all was told. */
export const notToldSaid = (opinions: readonly Opinion[], said: Said, t: Translate): string | undefined => {
  const what = opinions.filter(({ verdict }) => verdict === 'not-told').map(({ about }) => said.about[about].toLowerCase());
  return what.length === 0 ? undefined : t('notTold', { what: what.join(', ') });
};
