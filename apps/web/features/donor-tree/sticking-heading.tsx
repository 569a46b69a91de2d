import type { Descent } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';

/** When and how a bundle was stuck, and how many of it. */
export function StickingHeading({ sticking }: { sticking: Descent['stickings'][number] }) {
  const t = useTranslations('donorTrees');
  const { stuckOn, opened, recipe, generation, secondTryOfId } = sticking;
  return (
    <>
      {stuckOn ? t('stuckOn', { n: opened, day: sayDay(stuckOn) }) : t('cameIn', { n: opened })}
      <span className="block text-base font-normal tracking-normal text-ink-soft">
        {[
          recipe && t('byRecipe', { name: recipe.name, version: recipe.version }),
          secondTryOfId && t('secondTry'),
          // A cutting of the wild tree is of the first generation, and nothing to say.
          generation > 1 && t('generation', { n: generation }),
        ].filter(Boolean).join(', ')}
      </span>
    </>
  );
}
