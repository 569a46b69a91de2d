'use client';

import { SHEET_BYTES } from '@sprigline/contract';
import { Field } from '../../ui/form/field.tsx';
import { describedBy, useField } from '../../ui/form/form-context.ts';
import { INPUT } from '../../ui/form/input-class.ts';

/** Chooses the file. Says at once when it is too large, so that nobody waits for a refusal. */
export function SheetField({ hint, tooLarge }: { hint: string; tooLarge: string }) {
  const field = useField('sheet');
  return (
    <Field name="sheet" hint={hint} hintId={field.hintId} errorId={field.errorId}>
      <input
        key={field.key}
        id="sheet"
        name="sheet"
        type="file"
        required
        accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain"
        aria-invalid={field.error !== undefined}
        aria-describedby={describedBy(field, hint)}
        onChange={({ currentTarget: input }) => {
          input.setCustomValidity((input.files?.[0]?.size ?? 0) > SHEET_BYTES ? tooLarge : '');
          input.reportValidity();
          if (!input.validity.valid) input.value = '';
        }}
        className={INPUT}
      />
    </Field>
  );
}
