import { useTranslations } from 'next-intl';
import { PadKey } from '../../ui/form/pad-key.tsx';
import type { Field } from './answer.ts';

/** Where the keys write: a number of the batch, or the dead of one cause. */
export type Active = { readonly field: Field } | { readonly cause: string };

const AT_MOST = 1_000_000;
const FIGURES = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

/** What a key makes of a number. Blank stays blank until a figure is tapped. */
export function numberAfter(n: number | undefined, key: string): number | undefined {
  if (key === 'clear') return undefined;
  if (key === 'back') return n === undefined || n < 10 ? undefined : Math.floor(n / 10);
  const next = Number(`${n ?? ''}${key}`);
  return next > AT_MOST ? n : next;
}

/** Keys for wet gloves, always there, so that a count is its figures and one tap. */
export function Keypad({ active, press }: { active: Active; press: (key: string) => void }) {
  const t = useTranslations('round');
  const ui = useTranslations('ui');
  const causes = useTranslations('entries.causes');
  const name = 'cause' in active ? causes(active.cause as 'brown') : t(`fields.${active.field}`);
  return (
    <div role="group" aria-label={t('keypad', { field: name })} className="round-keys grid grid-cols-3 gap-2">
      {FIGURES.map((figure) => (
        <PadKey key={figure} press={() => press(figure)}>{figure}</PadKey>
      ))}
      <PadKey says={ui('clear')} press={() => press('clear')}>×</PadKey>
      <PadKey press={() => press('0')}>0</PadKey>
      <PadKey says={ui('rubOut')} press={() => press('back')}>⌫</PadKey>
    </div>
  );
}
