import { useTranslations } from 'next-intl';
import { Way } from '../../ui/way.tsx';
import type { ReactNode } from 'react';
import type { Workplace } from '../../lib/workplace.ts';

/** Who is signed in and as what, the way to other programmes, and the way out. */
export function WhoIsHere({ workplace, signOut }: { workplace: Workplace; signOut: ReactNode }) {
  const t = useTranslations('shell');
  const role = useTranslations('words.role');
  return (
    <div className="grid gap-2">
      <p>
        <strong className="block text-base">{workplace.me.name}</strong> {role(workplace.role)}
      </p>
      {workplace.programmes > 1 && (
        <Way href="/programmes" className="py-1 underline">
          {t('otherProgrammes')}
        </Way>
      )}
      <Way href="/account" className="py-1 underline">
        {t('account')}
      </Way>
      {signOut}
    </div>
  );
}
