'use client';

import { useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Tag } from '../../ui/tag.tsx';
import { nameOf, NUMBERS, TICKS, type TypedField } from './typed-fields.ts';
import type { TypingState } from './typing-state.ts';

/** A line as the paper names it. Never how many the books have, so that nobody types what they expect. */
export interface LineToType {
  readonly number: number;
  readonly batchId: string;
  readonly label: string;
  readonly from: string;
  readonly place: string;
  readonly held: boolean;
  /** Said when it was typed back; null while it was not. */
  readonly typed: string | null;
}

interface TypingLineProps {
  readonly programme: string;
  readonly line: LineToType;
  readonly fields: readonly TypedField[];
  readonly state: TypingState;
}

/** One line of the sheet: number and label as printed, then its fields; what is wrong with it right below. */
export function TypingLine({ programme, line, fields, state }: TypingLineProps) {
  const t = useTranslations('workLists');
  const wrong = line.typed === null ? state.refused[line.number] : undefined;
  const errorId = `line-${line.number}-error`;
  return (
    <li id={`line-${line.number}`} tabIndex={-1} className={`scroll-mt-4 border-b border-line py-3 ${wrong ? 'border-l-4 border-l-rust pl-3' : ''}`}>
      <div className="flex flex-wrap items-baseline gap-x-3 gap-y-1">
        <span className="w-8 text-right text-lg font-semibold tabular-nums"><span className="sr-only">{t('type.line', { n: line.number })}</span><span aria-hidden>{line.number}</span></span>
        <Tag href={pageOf(programme, 'batches', line.batchId)}>{line.label}</Tag>
        <span className="text-sm text-ink-soft">{line.from}{line.from && ', '}{line.place}</span>
        {line.held && <strong className="text-sm">{t('sheet.held')}</strong>}
        {line.typed !== null && <span className="font-semibold text-juniper">✓ {t('type.done', { when: line.typed })}</span>}
      </div>
      {line.typed === null && (
        <div className="mt-2 flex flex-wrap items-end gap-3 sm:pl-11">
          {fields.map((field) => <LineField key={`${field}-${state.turn}`} field={field} number={line.number} typed={state.values[nameOf(line.number, field)]} errorId={wrong && errorId} />)}
        </div>
      )}
      {wrong && <p id={errorId} className="mt-2 font-semibold text-rust sm:pl-11">{wrong.words}</p>}
      {wrong?.mayConfirm && (
        <label className="mt-2 flex min-h-14 w-fit items-center gap-3 rounded-md border-2 border-line-strong bg-sheet px-4 sm:ml-11">
          <input type="checkbox" name={nameOf(line.number, 'confirm')} className="size-6" />
          <span>{t('type.confirm')} <span className="block text-sm text-ink-soft">{t('type.confirmHint')}</span></span>
        </label>
      )}
    </li>
  );
}

const BOX = 'min-h-12 rounded-md border-2 border-line-strong bg-sheet px-3 text-ink aria-[invalid=true]:border-rust';

function LineField({ field, number, typed, errorId }: { field: TypedField; number: number; typed: string | undefined; errorId: string | undefined }) {
  const t = useTranslations('workLists');
  const causes = useTranslations('entries.causes');
  const words = field === 'cause' ? t('type.cause') : t(`boxes.${field}`);
  const name = nameOf(number, field);
  const label = t('type.field', { field: words, n: number });
  const common = { name, 'aria-label': label, 'aria-describedby': errorId, 'data-column': field };
  return (
    <div className="grid gap-1">
      <span aria-hidden className="text-sm text-ink-soft">{words}</span>
      {field === 'cause' ? (
        <select {...common} defaultValue={typed ?? causes('unclear')} className={BOX}>
          {CAUSES.map((cause) => <option key={cause} value={causes(cause)}>{causes(cause)}</option>)}
        </select>
      ) : TICKS.has(field) ? (
        <input {...common} type="checkbox" defaultChecked={typed !== undefined} className="m-2 size-8" />
      ) : (
        <input {...common} type="text" autoComplete="off" inputMode={NUMBERS.has(field) ? 'numeric' : 'text'} list={field === 'placeId' ? 'places' : undefined} defaultValue={typed ?? ''} aria-invalid={errorId !== undefined} className={`${BOX} ${NUMBERS.has(field) ? 'w-20 text-right tabular-nums' : field === 'label' ? 'w-24' : 'w-40'}`} />
      )}
    </div>
  );
}

const CAUSES = ['unclear', 'brown', 'black', 'fluff', 'chewed', 'pulled', 'bark', 'frosted'] as const;
