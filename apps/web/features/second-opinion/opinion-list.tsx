import type { Opinion } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { notToldSaid, opinionSaid, type OpinionSaid } from '../../lib/opinion-said.ts';
import { Flag } from '../../ui/flag.tsx';

/** What is unusual first, each with why it matters and what others got; the rest is one step away. */
export function OpinionList({ opinions, species }: { opinions: readonly Opinion[]; species: string | undefined }) {
  const { secondOpinion: said } = useMessages();
  const t = useTranslations('secondOpinion');
  const words = opinions.map((one) => opinionSaid(one, species, said, t));
  const of = (verdict: Opinion['verdict']) => words.filter((one) => one.verdict === verdict);
  const untold = notToldSaid(opinions, said, t);
  const unusual = of('unusual');
  return (
    <div className="grid max-w-prose gap-4">
      {unusual.length === 0 ? <p><Flag tone="good">{t('summary', { unusual: 0 })}</Flag></p> : <ul className="grid gap-4">{unusual.map((one) => <li key={one.key}><Unusual words={one} /></li>)}</ul>}
      <Plain heading={said.usual} words={of('usual')} />
      <Plain heading={said.noEvidence} words={of('no-evidence')} />
      {untold && <p className="text-sm text-ink-soft">{untold}</p>}
    </div>
  );
}

/** What own cuttings can be told apart by afterwards. */
const HAVE_OTHERS: ReadonlySet<Opinion['about']> = new Set(['length', 'medium', 'hormone', 'donor-age']);

function Unusual({ words: { key, about, says, why, rests, others, trees } }: { words: OpinionSaid }) {
  const { secondOpinion: said } = useMessages();
  return (
    <div className="rounded-md border border-line bg-sheet p-4">
      <p className="flex flex-wrap items-center gap-x-3 gap-y-1"><Flag tone="look">{said.unusual}</Flag><strong>{about}</strong></p>
      <p className="mt-2">{says} {trees}</p>
      <p className="mt-1 text-ink-soft">{why}</p>
      {HAVE_OTHERS.has(key) && <p className="mt-2 text-sm">{others.length === 0 ? said.noOthers : others.join(' ')}</p>}
      <p className="text-sm text-ink-soft">{said.rests}: {rests}.</p>
    </div>
  );
}

function Plain({ heading, words }: { heading: string; words: readonly OpinionSaid[] }) {
  const { secondOpinion: said } = useMessages();
  if (words.length === 0) return null;
  return (
    <details>
      <summary className="min-h-8 cursor-pointer py-1 underline">{heading} ({words.length})</summary>
      <ul className="mt-1 grid gap-2 text-sm">
        {words.map(({ key, about, says, rests, verdict, others }) => (
          <li key={key}>
            <strong>{about}:</strong> {says} {others[0]} {verdict === 'usual' && <span className="text-ink-soft">{said.rests}: {rests}.</span>}
          </li>
        ))}
      </ul>
    </details>
  );
}
