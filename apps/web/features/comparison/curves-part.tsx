import type { RootingCurves } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { HowWorked } from '../../ui/how-worked.tsx';
import { Section } from '../../ui/section.tsx';

/** Whether some groups root sooner than others, below the curves that show it. */
export function CurvesPart({ difference, children }: { difference: RootingCurves['difference']; children: ReactNode }) {
  const { comparison: { curves: said } } = useMessages();
  const t = useTranslations('comparison.curves');
  return (
    <Section heading={said.heading} lead={said.lead}>
      {children}
      {difference.kind === 'told' && (
        <>
          <p className="mt-3 max-w-prose">{t('told', { chance: difference.chance < 0.001 ? 'rare' : 'some', n: (difference.chance * 100).toFixed(difference.chance < 0.1 ? 1 : 0) })}</p>
          <div className="text-sm"><HowWorked said={said.worked} /></div>
        </>
      )}
    </Section>
  );
}
