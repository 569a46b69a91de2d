import type { Effect } from '../ledger/books.ts';
import type { Stage } from '../ledger/entry.ts';
import type { CuttingMovement } from './cutting-history.ts';
import { withoutTakenBack } from './followed-cuttings.ts';

/** Where a plant is on its way; in a pot, or planted out of one, is the end that a forecast asks for. */
export const WAY = ['cutting', 'liner', 'potted', 'lost'] as const;
export type OnItsWay = (typeof WAY)[number];

/** What befell one batch, whatever its stage. Days are whole days since sticking. */
export interface StageBatch {
  readonly stage: Stage;
  /** In the order of its books; `toStage` for those that went on. */
  readonly movements: readonly (CuttingMovement & { readonly toStage?: Stage | undefined })[];
}

/** Plants that were in `state` from a day on and at `until` went to `to`, or were there as far as is known. */
export interface StageStay {
  readonly state: Exclude<OnItsWay, 'lost'>;
  readonly from: number;
  readonly until: number;
  readonly to?: OnItsWay | undefined;
  readonly plants: number;
  /** Still there, as far as is known: `until` is today. Left out where they went, if only out of this batch. */
  readonly isOpen?: true;
}

const LOST: readonly Effect[] = ['died', 'unaccounted', 'thrownOut', 'notRooted'];
const IN: readonly Effect[] = ['stuck', 'restuckIn', 'received', 'wentIn', 'splitIn', 'mixedIn', 'identifiedIn', 'givenIn', 'found'];
const stateOf = (stage: Stage): StageStay['state'] => (stage === 'planted' ? 'potted' : stage);

/**
 * How long plants of one sticking were at each stage, from its books.
 *
 * Who came first goes first. Splits and moves end one stay and begin another, so nobody is counted twice; what was given
 * out, mixed or stuck again was last seen when it left. Cuttings called are lost: that is what practice makes of them.
 *
 * @param batches of one sticking, of all stages
 * @param today days since sticking
 */
export function stageStays(batches: readonly StageBatch[], today: number): StageStay[] {
  return batches.flatMap(({ stage, movements }) => {
    const state = stateOf(stage);
    const lots: { from: number; plants: number }[] = [];
    const stays: StageStay[] = [];
    for (const { day, effect, n, toStage } of withoutTakenBack(movements)) {
      const on = Math.max(0, day);
      if (IN.includes(effect)) lots.push({ from: on, plants: n });
      else for (const lot of takeFirst(lots, n)) stays.push({ state, from: lot.from, until: Math.max(on, lot.from), plants: lot.plants, ...endOf(state, effect, toStage) });
    }
    return [...stays, ...lots.map(({ from, plants }) => ({ state, from, until: Math.max(from, today), plants, isOpen: true as const }))];
  });
}

function endOf(state: StageStay['state'], effect: Effect, toStage: Stage | undefined): { to?: OnItsWay } {
  if (LOST.includes(effect)) return { to: 'lost' };
  if (effect !== 'wentOn' || toStage === undefined || stateOf(toStage) === state) return {};
  return { to: stateOf(toStage) };
}

function takeFirst(lots: { from: number; plants: number }[], n: number): { from: number; plants: number }[] {
  const taken: { from: number; plants: number }[] = [];
  for (let open = n; open > 0; ) {
    const lot = lots.shift();
    if (!lot) break;
    const plants = Math.min(open, lot.plants);
    taken.push({ from: lot.from, plants });
    if (lot.plants > plants) lots.unshift({ from: lot.from, plants: lot.plants - plants });
    open -= plants;
  }
  return taken;
}
