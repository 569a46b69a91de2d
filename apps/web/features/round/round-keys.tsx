import { useTranslations } from 'next-intl';
import { Keypad } from '../../ui/form/keypad.tsx';
import type { Field } from './answer.ts';

/** Where the keys write: a number of the batch, or the dead of one cause. */
export type Active = { readonly field: Field } | { readonly cause: string };

/** The keys of a round, named by what they write. */
export function RoundKeys({ active, press }: { active: Active; press: (key: string) => void }) {
  const t = useTranslations('round');
  const causes = useTranslations('entries.causes');
  const name = 'cause' in active ? causes(active.cause as 'brown') : t(`fields.${active.field}`);
  return <Keypad name={t('keypad', { field: name })} press={press} />;
}
