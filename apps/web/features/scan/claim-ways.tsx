import type { Route } from 'next';
import { useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Way } from '../../ui/way.tsx';

/** What a new label may be on: four ways, each with a word on it. */
export const CLAIMS = ['batch', 'donorTree', 'place'] as const;
export type Claim = (typeof CLAIMS)[number];

/** "What is this label on?" */
export function ClaimWays({ programme, code }: { programme: string; code: string }) {
  const { claim: said } = useMessages().scan;
  const asked = (on: Claim) => `${pageOf(programme, 'scan', 'claim')}?${new URLSearchParams({ code, on })}`;
  const ways = [
    ...CLAIMS.map((on) => ({ href: asked(on), words: said.ways[on], hint: said.hints[on] })),
    { href: `${pageOf(programme, 'stick')}?${new URLSearchParams({ label: code })}`, words: said.ways.sticking, hint: said.hints.sticking },
  ];
  return (
    <ul className="grid gap-3 sm:grid-cols-2">
      {ways.map(({ href, words, hint }) => (
        <li key={href}>
          <Way href={href as Route} className="flex min-h-20 flex-col justify-center rounded-md border-2 border-line-strong bg-sheet px-5 py-3 no-underline hover:bg-lichen">
            <span className="text-lg font-semibold">{words}</span>
            <span className="text-sm text-ink-soft">{hint}</span>
          </Way>
        </li>
      ))}
    </ul>
  );
}
