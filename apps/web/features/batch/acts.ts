import type { Stage } from '@sprigline/contract';

/** What can be said of a batch on a page of its own, as it stands in addresses. */
export const ACTS = ['count', 'died', 'lift', 'call', 'pot', 'plant', 'move', 'join', 'give', 'throw-out', 'check', 'find', 'note'] as const;
export type Act = (typeof ACTS)[number];

export const isAct = (act: string): act is Act => ACTS.some((one) => one === act);

const BY_STAGE: Readonly<Record<Stage, readonly Act[]>> = {
  cutting: ['count', 'lift', 'call', 'died', 'pot', 'plant', 'move', 'join', 'give', 'throw-out', 'find', 'note'],
  liner: ['count', 'pot', 'plant', 'died', 'move', 'join', 'give', 'throw-out', 'find', 'note'],
  potted: ['count', 'plant', 'move', 'died', 'join', 'give', 'throw-out', 'find', 'note'],
  planted: ['check', 'died', 'move', 'find', 'note'],
};

/** The first two are what the stage is for; the rest stand behind them. Held plants stay where they are. */
export function actsFor(stage: Stage, isHeld: boolean): readonly Act[] {
  const moving: readonly Act[] = ['lift', 'pot', 'plant', 'move', 'join', 'give'];
  return BY_STAGE[stage].filter((act) => !isHeld || !moving.includes(act));
}

/** A plant that goes on keeps its line in a batch of the next stage. */
export const GOES_ON = { lift: 'lifted', pot: 'potted', plant: 'planted' } as const;

/** The act that a kind of entry is mended with; kinds without one can be withdrawn and written anew. */
export const ACT_OF_KIND: Readonly<Partial<Record<string, Act>>> = {
  counted: 'count', died: 'died', called: 'call', thrownOut: 'throw-out', found: 'find', checked: 'check', noted: 'note',
};
