import { useMessages } from 'next-intl';
import { HowWorked } from '../../ui/how-worked.tsx';

/** Under every figure: the method, its source, and what would make it wrong. Names of methods stand only here. */
export function WorkedOut({ what }: { what: 'funnel' | 'rates' | 'losses' | 'genes' | 'risk' }) {
  const { readings: { worked: said } } = useMessages();
  return <HowWorked said={said[what]} />;
}
