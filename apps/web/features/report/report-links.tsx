import { useMessages } from 'next-intl';

/** A report on paper and as a table. */
export function ReportLinks({ pdf, csv }: { pdf: (paper: 'a4' | 'letter') => string; csv: string }) {
  const { reports: said } = useMessages();
  const links = [[pdf('a4'), said.print], [pdf('letter'), said.printLetter], [csv, said.csv]] as const;
  return (
    <p className="not-on-paper mb-8 flex flex-wrap gap-x-6">
      {links.map(([href, words]) => <a key={href} href={href} className="inline-flex min-h-8 items-center underline">{words}</a>)}
    </p>
  );
}
