import { decidedHere } from '../../lib/phone/decide.ts';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { useKept } from '../../lib/phone/use-kept.ts';

const NOTHING: readonly OutboxItem[] = [];

/** What was not taken and then decided about, the newest decision first. */
export const useDecided = (): readonly OutboxItem[] => useKept<readonly OutboxItem[]>(decidedHere, NOTHING);
