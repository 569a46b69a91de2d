import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { MARK, PLATE } from '../../ui/form/plate.ts';
import { INPUT } from '../../ui/form/input-class.ts';
import { PlainSelect } from '../../ui/form/plain-select.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { buttonClass } from '../../ui/button-class.ts';
import { sayPrinter } from './print-settings.ts';
import { correctionFor, type Printer } from './printer.ts';
import { type LabelSheet, SHEETS } from './sheets.ts';

interface SheetOptionsProps {
  readonly programme: string;
  /** What else goes into the address: which labels. */
  readonly asked: Readonly<Record<string, string>>;
  readonly printer: Printer | undefined;
  readonly isRoll?: boolean;
}

/** Boxes of a table elsewhere on the page belong to this form. */
export const SHEET_FORM = 'sheet';

/** On what, from which label on, and how. A form that only reads: it leads to the PDF. */
export function SheetOptions({ programme, asked, printer, isRoll = false }: SheetOptionsProps) {
  const { labels: said } = useMessages();
  const t = useTranslations('labels');
  return (
    <form id={SHEET_FORM} method="get" action={pageOf(programme, 'labels', 'pdf')} className="not-on-paper grid max-w-prose justify-items-start gap-6">
      {Object.entries(asked).map(([name, value]) => <input key={name} type="hidden" name={name} value={value} />)}
      {printer && <input type="hidden" name="printer" value={sayPrinter(printer)} />}
      <div className="w-full"><PlainSelect name="sheet" label={said.sheet} chosen={undefined} options={SHEETS.map((sheet) => ({ id: sheet.id, name: nameOf(sheet, t) }))} /></div>
      <div>
        <label htmlFor="start" className="font-semibold">{said.start}</label>
        <p id="start-hint" className="text-sm text-ink-soft">{said.startHint}</p>
        <input id="start" name="start" inputMode="numeric" autoComplete="off" defaultValue="1" aria-describedby="start-hint" className={`${INPUT} mt-1 max-w-40 tabular-nums`} />
      </div>
      {!isRoll && <div className="w-full"><PlainSelect name="copies" label={said.copies} chosen={undefined} options={[{ id: '1', name: said.copiesOf[1] }, { id: '2', name: said.copiesOf[2] }]} /></div>}
      <div className="grid gap-2">
        {isRoll && <Tick name="free" words={said.onlyFree} isTicked />}
        <Tick name="wet" words={said.wet} hint={said.wetHint} />
        <Tick name="lines" words={said.cutLines} />
      </div>
      <div className="grid gap-2">
        <p>{said.printAt} {printer ? said.printerKnown : ''} {printer && SHEETS.some((sheet) => correctionFor(sheet, printer).isLess) ? said.printerSome : ''}</p>
        <RowLink href={pageOf(programme, 'labels', 'printer')}>{said.printer}</RowLink>
      </div>
      <button className={buttonClass()}>{said.pdf}</button>
    </form>
  );
}

function Tick({ name, words, hint, isTicked = false }: { name: string; words: string; hint?: string; isTicked?: boolean }) {
  return (
    <div>
      <label className={`${PLATE} w-fit`}>
        <input type="checkbox" name={name} defaultChecked={isTicked} className={MARK} aria-describedby={hint ? `${name}-hint` : undefined} />
        {words}
      </label>
      {hint && <p id={`${name}-hint`} className="mt-1 text-sm text-ink-soft">{hint}</p>}
    </div>
  );
}

/** Sheets are known by their dimensions; Letter ones in inches too. */
function nameOf({ paper, columns, rows, label: { width, height } }: LabelSheet, t: ReturnType<typeof useTranslations<'labels'>>): string {
  return t(`sheetName.${paper}`, { columns, rows, width, height, inches: `${inches(width)} × ${inches(height)}` });
}
const inches = (mm: number): string => String(Math.round((mm / 25.4) * 100) / 100);
