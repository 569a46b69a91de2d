import type { ReadingChoices } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { queryOf } from './reading-address.ts';

interface ReadingWaysProps {
  readonly programme: string;
  readonly choices: ReadingChoices;
  /** What the page is narrowed to; each way keeps it. */
  readonly chosen: Readonly<Record<string, string>>;
}

/** More than these stand in the filter as well. */
const MOST_SEASONS = 6;

/** The ways from the programme to its other readings. */
export function ReadingWays({ programme, choices, chosen }: ReadingWaysProps) {
  const { dashboards: { ways: said }, readings } = useMessages();
  const query = queryOf(chosen);
  const to = (...parts: readonly string[]): string => `${pageOf(programme, 'readings', ...parts)}${query}`;
  return (
    <nav aria-label={said.title} className="not-on-paper mb-10 grid gap-x-10 gap-y-4 rounded-lg border border-line bg-sheet p-4 sm:grid-cols-3">
      <Ways heading={said.whole} ways={[{ href: to('funnels'), words: said.funnels }, { href: to('compare'), words: said.compare }, { href: to('sites'), words: said.sites }, { href: to('donors-at-risk'), words: readings.atRiskAll }, { href: to('leave-or-call'), words: said.leaveOrCall }]} />
      <Ways heading={said.species} ways={choices.taxa.map(({ id, name }) => ({ href: to('species', id), words: name }))} />
      <Ways heading={said.season} ways={choices.seasons.slice(0, MOST_SEASONS).map(({ year, name }) => ({ href: to('seasons', String(year)), words: name }))} />
    </nav>
  );
}

function Ways({ heading, ways }: { heading: string; ways: readonly { readonly href: string; readonly words: string }[] }) {
  if (ways.length === 0) return null;
  return (
    <div>
      <p className="font-semibold">{heading}</p>
      <ul className="flex flex-wrap gap-x-5 sm:block">{ways.map(({ href, words }) => <li key={href}><RowLink href={href}>{words}</RowLink></li>)}</ul>
    </div>
  );
}
