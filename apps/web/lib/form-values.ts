/** Text out of a form, as the API wants it. Whether it is allowed is for the API to say. */

/** What was typed, trimmed; nothing when the field was left empty. */
export function text(form: FormData, name: string): string | undefined {
  const value = form.get(name);
  return typeof value === 'string' && value.trim() !== '' ? value.trim() : undefined;
}

/**
 * A number; nothing when left empty. What is no number goes on as it was typed,
 * so that the API can say so beside the field.
 */
export function number(form: FormData, name: string): number | string | undefined {
  const typed = text(form, name);
  if (typed === undefined) return undefined;
  const value = Number(typed.replace(',', '.'));
  return Number.isFinite(value) ? value : typed;
}

export function isTicked(form: FormData, name: string): boolean {
  return form.get(name) !== null;
}

/** The day chosen by a day field: today and yesterday come with their own date. */
export function day(form: FormData, name: string): string | undefined {
  const choice = text(form, name);
  return choice === 'another' ? text(form, `${name}/another`) : choice;
}

/** All that were ticked of a field of several. */
export function several(form: FormData, name: string): string[] {
  return [...form.keys()].filter((key) => key.startsWith(`${name}/`)).map((key) => key.slice(name.length + 1));
}
