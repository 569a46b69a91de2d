'use client';

import { useField } from './form-context.ts';

/** An id made with the page. A form that comes back with a refusal keeps it, also without script: what was written is not written again. */
export function HiddenField({ name, value }: { name: string; value: string }) {
  const field = useField(name);
  return <input type="hidden" name={name} value={field.typed ?? value} />;
}
