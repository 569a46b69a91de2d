import type { SheetGuess } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { Table } from '../../ui/table.tsx';

/** The first rows of a sheet, so that a person sees whether letters and columns are read rightly. */
export function SheetSample({ guess }: { guess: SheetGuess }) {
  const { imports: said } = useMessages();
  const rows = guess.sample.map((cells, index) => ({ cells, key: String(index) }));
  return (
    <>
      {guess.encoding === 'windows-1252' && <p className="mb-3 max-w-prose">{said.one.encoding}</p>}
      <Table
        caption={said.one.sample}
        rows={rows}
        keyOf={({ key }) => key}
        columns={guess.headings.map((head, column) => ({ head, cell: ({ cells }: (typeof rows)[number]) => cells[column] }))}
      />
    </>
  );
}
