import { useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';

/** The ways to the same on paper, and where it is a table to a spreadsheet. */
export function PaperWays({ pdf, csv }: { pdf: string; csv?: string }) {
  const said = useMessages().requests;
  return (
    <nav aria-label={said.paper} className="not-on-paper flex flex-wrap gap-3">
      <a className={buttonClass('quiet')} href={pdf}>{said.pdfA4}</a>
      <a className={buttonClass('quiet')} href={`${pdf}?paper=letter`}>{said.pdfLetter}</a>
      {csv !== undefined && <a className={buttonClass('quiet')} href={csv} download>{said.csv}</a>}
    </nav>
  );
}
