import { useMessages, useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { DoorPage } from '../../ui/door-page.tsx';
import { INPUT } from '../../ui/form/input-class.ts';
import { filled } from '../../ui/scanner/scanner-words.ts';

/** Outside of any programme: a label typed by hand, after one that led nowhere. A plain form. */
export function TypeLabel({ wrong, isMistyped = false }: { wrong?: string; isMistyped?: boolean }) {
  const { scanner } = useMessages().scan;
  const t = useTranslations('scan.door');
  const words = wrong === undefined ? undefined : isMistyped ? filled(scanner.mistyped, { code: wrong }) : t('unknown', { code: wrong });
  return (
    <DoorPage heading={t('title')} lead={words ? undefined : t('lead')}>
      {words && <p id="wrong" role="alert" className="mb-6 font-semibold text-rust">{words}</p>}
      <form method="get" action="/l">
        <label htmlFor="code" className="font-semibold">{scanner.typed}</label>
        <div className="mt-1 flex gap-2">
          <input id="code" name="code" required defaultValue={wrong} autoComplete="off" autoCapitalize="characters" spellCheck={false} enterKeyHint="go" aria-describedby={words && 'wrong'} aria-invalid={words !== undefined} className={INPUT} />
          <button className={buttonClass()}>{scanner.go}</button>
        </div>
      </form>
      {words && !isMistyped && <p className="mt-8 text-sm text-ink-soft">{t('notYours')}</p>}
    </DoorPage>
  );
}
