import type { Problem } from '@sprigline/contract';

export interface OwnWords {
  /** For a field left empty that may not be. */
  readonly needsAnAnswer: string;
  readonly mustBeANumber: string;
}

/**
 * The sentence for each field that the API marked, by the field's name: `#/exactPlace/latitude`
 * marks the field `exactPlace/latitude`, and a part without a field of its own marks the nearest one above.
 *
 * @param labels what each field is called
 * @param ours words for what contracts say in the language of programs
 */
export function fieldErrors(problem: Problem | undefined, labels: Readonly<Record<string, string>>, ours: OwnWords): Record<string, string> {
  const errors: Record<string, string> = {};
  for (const { pointer, detail } of problem?.errors ?? []) {
    const name = nearestField(pointer.replace(/^#\/?/, ''), labels);
    if (name !== undefined) errors[name] ??= sentence(labels[name] ?? name, detail, ours);
  }
  return errors;
}

/** Sentences that belong to no field of the form. */
export function strayErrors(problem: Problem | undefined, labels: Readonly<Record<string, string>>): string[] {
  return (problem?.errors ?? [])
    .filter(({ pointer }) => nearestField(pointer.replace(/^#\/?/, ''), labels) === undefined)
    .map(({ pointer, detail }) => (pointer === '#' ? detail : `${pointer.slice(2)}: ${detail}`));
}

function nearestField(path: string, labels: Readonly<Record<string, string>>): string | undefined {
  for (let at = path; at !== ''; at = at.slice(0, Math.max(0, at.lastIndexOf('/')))) {
    if (Object.hasOwn(labels, at)) return at;
  }
  return undefined;
}

function sentence(label: string, detail: string, { needsAnAnswer, mustBeANumber }: OwnWords): string {
  // Nobody types the id of a thing: it was not chosen.
  if (/received (undefined|null)|expected one of|Invalid option|must be a UUID/i.test(detail)) return `${label} ${needsAnAnswer}.`;
  if (/expected (number|int)\b/i.test(detail)) return `${label} ${mustBeANumber}.`;
  const joined = /^[a-z]/.test(detail) ? `${label} ${detail}` : `${label}: ${detail}`;
  return /[.!?]$/.test(joined) ? joined : `${joined}.`;
}
