import { useMessages } from 'next-intl';
import { More } from './more.tsx';

/** Under every figure, one step away: its method, what it is made of, its source, and what would make it wrong. */
export function HowWorked({ said }: { said: Readonly<Record<'method' | 'from' | 'source' | 'wrong', string>> }) {
  const { ui: { worked } } = useMessages();
  return (
    <More words={worked.title}>
      <dl className="max-w-prose text-sm">
        {(['method', 'from', 'source', 'wrong'] as const).map((part) => (
          <div key={part} className="mb-1.5 gap-4 sm:flex">
            <dt className="w-24 shrink-0 font-semibold">{worked.parts[part]}</dt>
            <dd className="text-ink-soft">{said[part]}</dd>
          </div>
        ))}
      </dl>
    </More>
  );
}
