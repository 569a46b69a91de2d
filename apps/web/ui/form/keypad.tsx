import { useTranslations } from 'next-intl';
import { PadKey } from './pad-key.tsx';

const AT_MOST = 1_000_000;
const FIGURES = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

/** What a key makes of a number. Blank stays blank until a figure is tapped. */
export function numberAfter(n: number | undefined, key: string): number | undefined {
  if (key === 'clear') return undefined;
  if (key === 'back') return n === undefined || n < 10 ? undefined : Math.floor(n / 10);
  const next = Number(`${n ?? ''}${key}`);
  return next > AT_MOST ? n : next;
}

/** Keys for wet gloves, always there, so that a count is its figures and one tap. @param name what they write, for who cannot see it */
export function Keypad({ name, press }: { name: string; press: (key: string) => void }) {
  const t = useTranslations('ui');
  return (
    <div role="group" aria-label={name} className="round-keys grid grid-cols-3 gap-2">
      {FIGURES.map((figure) => (
        <PadKey key={figure} press={() => press(figure)}>{figure}</PadKey>
      ))}
      <PadKey says={t('clear')} press={() => press('clear')}>×</PadKey>
      <PadKey press={() => press('0')}>0</PadKey>
      <PadKey says={t('rubOut')} press={() => press('back')}>⌫</PadKey>
    </div>
  );
}
