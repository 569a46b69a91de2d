import type { CompareBy, ComparedGroup, ComparedPair } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { canBeLaidOut } from './comparison-address.ts';

interface CannotTellProps {
  readonly pair: ComparedPair;
  readonly by: CompareBy;
  /** The two, with the words that their cuttings are told by. */
  readonly groups: readonly { readonly group: ComparedGroup; readonly words: string }[];
}

/** Why the cuttings can't answer, and what to do next year so that they can. */
export function CannotTell({ pair: { state, mixedUpWith, unknown, advice }, by, groups }: CannotTellProps) {
  const { comparison: { warning: said } } = useMessages();
  const t = useTranslations('comparison.warning');
  if (mixedUpWith.length === 0 && unknown.length === 0) return null;
  const lists = new Intl.ListFormat('en-GB', { type: 'conjunction' });
  const ofOneTree = mixedUpWith.includes('donor') ? groups.flatMap(({ group, words }) => (group.byDonor?.kind === 'best-and-worst' && group.donors === 1 && group.ofUnknownDonor === 0 ? [{ group: words, label: group.byDonor.best.label }] : [])) : [];
  if (mixedUpWith.length === 0) return <p className="max-w-prose text-ink-soft">{t('unknown', { list: lists.format(unknown.map((name) => said.names[name])) })}</p>;
  return (
    <aside className="max-w-prose rounded-md border-2 border-on-straw bg-straw p-4 text-on-straw" aria-label={said.title}>
      <p className="font-semibold">{state === 'too-early' ? said.early : said.title}</p>
      <p className="mt-1">{said.why}</p>
      <ul className="list-disc pl-5">{mixedUpWith.map((nuisance) => <li key={nuisance}>{said.mixedUp[nuisance]}</li>)}</ul>
      {ofOneTree.map((one) => <p key={one.group} className="mt-1">{t('oneTree', one)}</p>)}
      <p className="mt-2 font-semibold">{said.todo}</p>
      <ul className="list-disc pl-5">
        {advice.map((what) => <li key={what}>{said.advice[what === 'each-donor-in-both' && !canBeLaidOut(by) && by !== 'season' ? 'five-trees-each' : what]}</li>)}
      </ul>
      {unknown.length > 0 && <p className="mt-2">{t('unknown', { list: lists.format(unknown.map((name) => said.names[name])) })}</p>}
    </aside>
  );
}
