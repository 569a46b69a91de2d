'use client';

import type { ReactNode } from 'react';
import { MARK, PLATE } from './plate.ts';
import { useField } from './form-context.ts';

/** A yes or no. */
export function TickField({ name, hint, isTicked = false }: { name: string; hint?: ReactNode; isTicked?: boolean }) {
  const field = useField(name);
  return (
    <div className="w-full max-w-prose">
      <label className={`${PLATE} w-fit`}>
        <input key={field.key} id={name} type="checkbox" name={name} defaultChecked={field.typed === undefined ? isTicked : true} className={MARK} aria-describedby={hint ? field.hintId : undefined} />
        {field.label}
      </label>
      {hint && (
        <p id={field.hintId} className="mt-1 text-sm text-ink-soft">
          {hint}
        </p>
      )}
    </div>
  );
}
