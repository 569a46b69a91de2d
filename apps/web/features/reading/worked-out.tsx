import { useMessages } from 'next-intl';

/** Under every figure: the method, its source, and what would make it wrong. Names of methods stand only here. */
export function WorkedOut({ what }: { what: 'funnel' | 'rates' | 'genes' | 'risk' }) {
  const { readings: said } = useMessages();
  return (
    <details className="mt-3 max-w-prose text-sm">
      <summary className="min-h-8 cursor-pointer font-semibold underline">{said.worked.title}</summary>
      <p className="mt-1 text-ink-soft">{said.worked[what]}</p>
    </details>
  );
}
