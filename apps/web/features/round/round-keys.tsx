import { useTranslations } from 'next-intl';
import { memo } from 'react';
import { Keypad } from '../../ui/form/keypad.tsx';
import type { Active } from './counting.ts';

/** The keys of a round, named by what they write. A tap leaves them as they are. */
export const RoundKeys = memo(function RoundKeys({ active, press }: { active: Active; press: (key: string) => void }) {
  const t = useTranslations('round');
  const causes = useTranslations('entries.causes');
  const name = 'cause' in active ? causes(active.cause as 'brown') : t(`fields.${active.field}`);
  return <Keypad name={t('keypad', { field: name })} press={press} />;
});
