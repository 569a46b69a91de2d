import { type KnownHere, knownHere } from './known-here.ts';
import { useKept } from '../../lib/phone/use-kept.ts';

const NOTHING: KnownHere = { names: new Map(), placeOf: new Map(), zones: new Map(), own: new Map() };

/** Names for what stands in the outbox; without any, what has to be told is told without names. */
export const useKnownHere = (): KnownHere => useKept(knownHere, NOTHING);
