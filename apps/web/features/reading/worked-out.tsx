import { useMessages } from 'next-intl';
import { More } from './more.tsx';

/** Under every figure: the method, its source, and what would make it wrong. Names of methods stand only here. */
export function WorkedOut({ what }: { what: 'funnel' | 'rates' | 'losses' | 'genes' | 'risk' }) {
  const { readings: { worked: said } } = useMessages();
  const parts = ['method', 'from', 'source', 'wrong'] as const;
  return (
    <More words={said.title}>
      <dl className="max-w-prose text-sm">
        {parts.map((part) => (
          <div key={part} className="mb-1.5 gap-4 sm:flex">
            <dt className="w-24 shrink-0 font-semibold">{said.parts[part]}</dt>
            <dd className="text-ink-soft">{said[what][part]}</dd>
          </div>
        ))}
      </dl>
    </More>
  );
}
