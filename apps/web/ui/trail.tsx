import { Way } from './way.tsx';
import { useTranslations } from 'next-intl';

export interface Step {
  readonly href: string;
  readonly words: string;
}

/** The way back up, above a page's name. */
export function Trail({ steps }: { steps: readonly Step[] }) {
  const t = useTranslations('ui');
  return (
    <nav aria-label={t('trail')} className="mb-3 text-sm">
      <ol className="flex flex-wrap gap-x-2">
        {steps.map(({ href, words }) => (
          <li key={href} className="flex items-center gap-x-2 not-first:before:text-ink-soft not-first:before:content-['›']">
            <Way href={href} className="inline-flex min-h-8 items-center text-ink underline">
              {words}
            </Way>
          </li>
        ))}
      </ol>
    </nav>
  );
}
