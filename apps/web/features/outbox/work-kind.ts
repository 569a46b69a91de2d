import type { Work } from '../../lib/phone/outbox-item.ts';

const RECORDS = ['trips', 'donor-trees', 'bundles', 'sealed-place', 'labels'] as const;

/** What something that is no entry is called: a record by the noun at the end of its address. */
export function workKind(work: Exclude<Work, { kind: 'entry' }>): (typeof RECORDS)[number] | 'record' | 'photo' {
  if (work.kind === 'photo') return 'photo';
  const noun = work.path.split('/').at(-1);
  return RECORDS.find((one) => one === noun) ?? 'record';
}
