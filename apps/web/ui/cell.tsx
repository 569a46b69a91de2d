import { useTranslations } from 'next-intl';

interface CellProps {
  readonly cell: { readonly latitude: number; readonly longitude: number; readonly degrees: number; readonly halfDiagonalM: number } | null;
}

/** The square of a grid in which something wild stands: as close as everybody is told. */
export function Cell({ cell }: CellProps) {
  const t = useTranslations('words.cell');
  if (!cell) return <span className="text-ink-soft italic">{t('withheld')}</span>;
  const places = Math.round(-Math.log10(cell.degrees));
  const within = cell.halfDiagonalM >= 1_000 ? t('kilometres', { n: Math.round(cell.halfDiagonalM / 1_000) }) : t('metres', { n: Math.round(cell.halfDiagonalM) });
  return (
    <>
      {cell.latitude.toFixed(places + 1)}°, {cell.longitude.toFixed(places + 1)}° <span className="text-ink-soft">({within})</span>
    </>
  );
}
