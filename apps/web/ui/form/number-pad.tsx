'use client';

import { useTranslations } from 'next-intl';
import { type ReactNode, useState } from 'react';
import { describedBy, useField } from './form-context.ts';
import { PadKey } from './pad-key.tsx';

interface NumberPadProps {
  readonly name: string;
  readonly hint?: ReactNode;
  /** Left empty, it says nothing; that is not the same as nought. */
  readonly value?: number | undefined;
  readonly atMost?: number;
  readonly onChange?: (value: number | undefined) => void;
}

const FIGURES = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

/** A count, with keys of its own: big enough for wet gloves, and no keyboard that covers half the screen. */
export function NumberPad({ name, hint, value, atMost = 1_000_000, onChange }: NumberPadProps) {
  const field = useField(name);
  const t = useTranslations('ui');
  const [typed, setTyped] = useState(field.typed ?? (value === undefined ? '' : String(value)));
  const [isOpen, setOpen] = useState(false);

  function say(next: string) {
    const figures = next.replace(/\D/g, '').replace(/^0+(?=\d)/, '');
    if (figures !== '' && Number(figures) > atMost) return;
    setTyped(figures);
    onChange?.(figures === '' ? undefined : Number(figures));
  }
  const step = (by: number) => say(String(Math.max(0, Number(typed || '0') + by)));

  return (
    <div className={`w-full max-w-sm ${field.error ? 'border-l-4 border-rust pl-4' : ''}`}>
      <label htmlFor={name} className="text-lg font-semibold">
        {field.label}
      </label>
      {hint && <p id={field.hintId} className="text-sm text-ink-soft">{hint}</p>}
      {field.error && <p id={field.errorId} className="font-semibold text-rust">{field.error}</p>}
      <div className="mt-1 grid grid-cols-[4rem_1fr_4rem] gap-2">
        <PadKey says={t('oneLess')} press={() => step(-1)}>−</PadKey>
        <input
          id={name}
          name={name}
          value={typed}
          onChange={(event) => say(event.target.value)}
          onFocus={() => setOpen(true)}
          // The phone's own keyboard stays down where ours is there; a desk types as ever.
          inputMode={isOpen ? 'none' : 'numeric'}
          autoComplete="off"
          aria-invalid={field.error !== undefined}
          aria-describedby={describedBy(field, hint)}
          className="min-h-16 w-full rounded-md border-2 border-line-strong bg-sheet text-center text-3xl font-semibold tabular-nums aria-[invalid=true]:border-rust"
        />
        <PadKey says={t('oneMore')} press={() => step(1)}>+</PadKey>
      </div>
      {isOpen && (
        <div role="group" aria-label={t('keypad', { label: field.label })} className="mt-2 grid grid-cols-3 gap-2">
          {FIGURES.map((figure) => (
            <PadKey key={figure} press={() => say(typed + figure)}>{figure}</PadKey>
          ))}
          <PadKey says={t('clear')} press={() => say('')}>×</PadKey>
          <PadKey press={() => say(`${typed}0`)}>0</PadKey>
          <PadKey says={t('rubOut')} press={() => say(typed.slice(0, -1))}>⌫</PadKey>
        </div>
      )}
    </div>
  );
}
