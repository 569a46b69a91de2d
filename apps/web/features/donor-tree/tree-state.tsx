import type { DonorTree } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { Flag, type FlagTone } from '../../ui/flag.tsx';

const TONES: Readonly<Record<DonorTree['state'], FlagTone>> = { standing: 'good', notSeen: 'look', dead: 'grave', unknown: 'plain' };

/** Whether the wild tree still stands: its cuttings may be the last copies. */
export function TreeState({ state }: { state: DonorTree['state'] }) {
  const said = useMessages().donorTrees;
  return <Flag tone={TONES[state]}>{said.state[state]}</Flag>;
}
