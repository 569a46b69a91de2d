import { useTranslations } from 'next-intl';
import type { Field, Numbers } from './answer.ts';

interface NumberFieldsProps {
  readonly fields: readonly Field[];
  readonly numbers: Numbers;
  readonly dead: number;
  readonly active: Field;
  readonly activate: (field: Field) => void;
  readonly openDead: () => void;
}

const BOX =
  'flex min-h-16 min-w-0 flex-1 cursor-pointer touch-manipulation flex-col items-center justify-center rounded-md border-2 bg-sheet px-1 select-none';

/** What is there to count, side by side; the marked one takes what the keys write. */
export function NumberFields({ fields, numbers, dead, active, activate, openDead }: NumberFieldsProps) {
  const t = useTranslations('round');
  return (
    <div className="flex gap-2">
      {fields.map((field) => (
        <button
          key={field}
          type="button"
          aria-pressed={field === active}
          onClick={() => activate(field)}
          className={`${BOX} ${field === active ? 'border-juniper bg-lichen text-on-lichen shadow-[inset_0_-4px_0_var(--juniper)]' : 'border-line-strong'}`}
        >
          <Counted words={t(`fields.${field}`)} n={numbers[field]} />
        </button>
      ))}
      <button type="button" onClick={openDead} className={`${BOX} border-line-strong`}>
        <Counted words={t('fields.dead')} n={dead === 0 ? undefined : dead} />
      </button>
    </div>
  );
}

function Counted({ words, n }: { words: string; n: number | undefined }) {
  return (
    <>
      <span className="text-sm leading-tight">{words}</span>
      <span className="text-2xl leading-none font-semibold tabular-nums">{n ?? '–'}</span>
    </>
  );
}
