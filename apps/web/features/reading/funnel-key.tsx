import { useMessages } from 'next-intl';

const SQUARE = { x: 1.5, y: 1.5, width: 13, height: 13 };

/** What the shapes of a paired funnel mean; once a page. */
export function FunnelKey() {
  const { readings: { chart: { key: said } } } = useMessages();
  const marks = [
    { words: said.here, mark: <rect {...SQUARE} className="fill-juniper stroke-juniper" /> },
    { words: said.goneOn, mark: <rect {...SQUARE} className="fill-lichen stroke-lichen-deep print:fill-lichen-deep" /> },
    { words: said.away, mark: <rect {...SQUARE} className="fill-sheet stroke-lichen-deep" /> },
    { words: said.left, mark: <circle cx="8" cy="8" r="5" className="fill-juniper stroke-juniper" /> },
    { words: said.lost, mark: <circle cx="8" cy="8" r="5" className="fill-sheet stroke-lichen-deep" /> },
  ];
  return (
    <ul className="mb-6 flex max-w-4xl flex-wrap gap-x-6 gap-y-1.5 text-sm" aria-label={said.title}>
      {marks.map(({ words, mark }) => (
        <li key={words} className="inline-flex items-center gap-2">
          <svg viewBox="0 0 16 16" width="16" height="16" className="shrink-0" strokeWidth="1.4" aria-hidden>{mark}</svg>
          {words}
        </li>
      ))}
    </ul>
  );
}
