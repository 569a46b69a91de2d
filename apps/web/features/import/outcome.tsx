import type { Import } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Section } from '../../ui/section.tsx';

/** While a sheet is written: looks again by itself, without a script. */
export function Writing({ programme, sheet }: { programme: string; sheet: Import }) {
  const { imports: said } = useMessages();
  const t = useTranslations('imports');
  const { done, total } = sheet.progress ?? { done: 0, total: sheet.guess.rows };
  return (
    <Section heading={said.writing.title} lead={said.writing.lead}>
      <meta httpEquiv="refresh" content="2" />
      <progress className="h-6 w-full max-w-prose accent-[var(--juniper)]" value={done} max={Math.max(total, 1)} aria-label={said.writing.title} />
      <p className="mt-2 mb-4 tabular-nums" role="status">
        {t('writing.progress', { done, total })}
      </p>
      <ButtonLink href={pageOf(programme, 'import', sheet.id)} look="quiet">
        {said.writing.again}
      </ButtonLink>
    </Section>
  );
}

export function Written({ programme, result }: { programme: string; result: NonNullable<Import['result']> }) {
  const { imports: said } = useMessages();
  const t = useTranslations('imports');
  return (
    <Section heading={said.written.title}>
      <p className="max-w-prose">{t('written.lead', result)}</p>
      <p className="mt-1 mb-4 max-w-prose">{t('written.flags', { flags: result.flags })}</p>
      <div className="flex flex-wrap gap-3">
        {result.flags > 0 && <ButtonLink href={pageOf(programme, 'review')}>{said.written.review}</ButtonLink>}
        <ButtonLink href={pageOf(programme, 'readings')} look="quiet">
          {said.written.readings}
        </ButtonLink>
      </div>
    </Section>
  );
}

export function Failed({ failure }: { failure: string | null }) {
  const { imports: said, refusals } = useMessages();
  const words: Readonly<Record<string, string>> = refusals;
  return (
    <Section heading={said.failed.title}>
      <p className="max-w-prose text-rust">{words[failure ?? ''] ?? said.failed.broken}</p>
    </Section>
  );
}
