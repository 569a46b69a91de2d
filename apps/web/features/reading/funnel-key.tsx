import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { Dot } from './donor-lane.tsx';
import { FATES } from './funnel-shape.ts';
import { FATE_LOOK } from './plant-lane.tsx';

/** What bars and dots of a paired funnel mean; once a page. */
export function FunnelKey({ hasAway }: { hasAway: boolean }) {
  const t = useTranslations('readings.key');
  return (
    <div role="group" aria-label={t('title')} className="mb-6 grid gap-x-8 gap-y-2 text-sm sm:grid-cols-2">
      <Row heading={t('plants')}>
        {FATES.filter((fate) => fate !== 'away' || hasAway).map((fate) => (
          <Sign key={fate} words={t(fate)}>
            <rect x="1" y="3" width="18" height="14" strokeWidth="1.25" className={FATE_LOOK[fate]} />
          </Sign>
        ))}
      </Row>
      <Row heading={t('donors')}>
        {(['left', 'gone', 'never'] as const).map((fate) => (
          <Sign key={fate} words={t(fate)}>
            <g transform="scale(1.7)">
              <Dot cx={5.9} cy={5.9} fate={fate} />
            </g>
          </Sign>
        ))}
      </Row>
    </div>
  );
}

function Row({ heading, children }: { heading: string; children: ReactNode }) {
  return (
    <div>
      <p className="font-semibold">{heading}</p>
      <ul className="flex flex-wrap gap-x-4">{children}</ul>
    </div>
  );
}

function Sign({ words, children }: { words: string; children: ReactNode }) {
  return (
    <li className="flex items-center gap-1.5">
      <svg viewBox="0 0 20 20" width="20" height="20" className="shrink-0" aria-hidden>
        {children}
      </svg>
      {words}
    </li>
  );
}
