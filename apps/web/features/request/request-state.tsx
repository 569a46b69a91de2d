import type { RequestState as State } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { Flag, type FlagTone } from '../../ui/flag.tsx';

const TONES: Readonly<Record<State, FlagTone>> = { asked: 'look', promised: 'plain', packed: 'plain', gone: 'good', withdrawn: 'plain' };

export function RequestState({ state }: { state: State }) {
  return <Flag tone={TONES[state]}>{useTranslations('requests.states')(state)}</Flag>;
}
