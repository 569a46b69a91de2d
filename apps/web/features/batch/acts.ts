import type { Stage } from '@sprigline/contract';

/** What can be said of a batch on a page of its own, as it stands in addresses. */
export const ACTS = ['count', 'died', 'lift', 'call', 'pot', 'plant', 'move', 'join', 'give', 'throw-out', 'restick', 'identify', 'hold', 'release', 'check', 'find', 'note'] as const;
export type Act = (typeof ACTS)[number];

export const isAct = (act: string): act is Act => ACTS.some((one) => one === act);

const BY_STAGE: Readonly<Record<Stage, readonly Act[]>> = {
  cutting: ['count', 'lift', 'call', 'died', 'pot', 'plant', 'move', 'join', 'give', 'throw-out', 'restick', 'identify', 'hold', 'release', 'find', 'note'],
  liner: ['count', 'pot', 'plant', 'died', 'move', 'join', 'give', 'throw-out', 'identify', 'hold', 'release', 'find', 'note'],
  potted: ['count', 'plant', 'move', 'died', 'join', 'give', 'throw-out', 'identify', 'hold', 'release', 'find', 'note'],
  planted: ['check', 'died', 'move', 'identify', 'hold', 'release', 'find', 'note'],
};

interface ActsQuestion {
  readonly stage: Stage;
  readonly held: boolean;
  readonly isMixed: boolean;
}

const MOVING: readonly Act[] = ['lift', 'pot', 'plant', 'move', 'join', 'give'];

/**
 * The first two are what the stage is for; the rest stand behind them. Held plants stay
 * where they are, and are released first. Only what is mixed has to be told apart.
 */
export function actsFor({ stage, held, isMixed }: ActsQuestion): readonly Act[] {
  const unfit: readonly Act[] = [...(held ? [...MOVING, 'hold' as const] : ['release' as const]), ...(isMixed ? ['restick' as const] : ['identify' as const])];
  const fit = BY_STAGE[stage].filter((act) => !unfit.includes(act));
  return held ? ['release', ...fit.filter((act) => act !== 'release')] : fit;
}

/** A plant that goes on keeps its line in a batch of the next stage. */
export const GOES_ON = { lift: 'lifted', pot: 'potted', plant: 'planted' } as const;

/** The act that a kind of entry is mended with; kinds without one can be withdrawn and written anew. */
export const ACT_OF_KIND: Readonly<Partial<Record<string, Act>>> = {
  counted: 'count', died: 'died', called: 'call', thrownOut: 'throw-out', found: 'find', checked: 'check', noted: 'note',
};
