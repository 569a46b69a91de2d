import { numberAfter } from '../../ui/form/keypad.tsx';
import { type Dead, type Field, fieldsFor, type Numbers, type slipIn } from './answer.ts';
import type { Look, Stage } from './stop.ts';
import type { Typing } from './typing.ts';

/** Where the keys write: a number of the batch, or the dead of one cause. */
export type Active = { readonly field: Field } | { readonly cause: string };

/** What is being counted of one batch, before it is told. */
export interface Counting extends Typing {
  readonly active: Active;
  /** What is wrong with it, until a key is tapped. */
  readonly slip: ReturnType<typeof slipIn>;
}

export type CountingStep =
  | { readonly step: 'press'; readonly key: string }
  | { readonly step: 'activate'; readonly active: Active }
  | { readonly step: 'look'; readonly look: Look; readonly stage: Stage }
  | { readonly step: 'slip'; readonly slip: Counting['slip'] };

export const countingOf = ({ look, numbers, dead }: Typing): Counting => ({ look, numbers, dead, active: { field: 'alive' }, slip: undefined });

export function countingAfter(counting: Counting, step: CountingStep): Counting {
  switch (step.step) {
    case 'press':
      return { ...counting, ...written(counting, step.key), slip: undefined };
    case 'activate':
      return { ...counting, active: step.active };
    case 'look':
      return seenWith(counting, step.look, step.stage);
    case 'slip':
      return { ...counting, slip: step.slip };
  }
}

function written({ active, numbers, dead }: Counting, key: string): { numbers: Numbers } | { dead: Dead } {
  if ('cause' in active) return { dead: { ...dead, [active.cause]: numberAfter(dead[active.cause], key) ?? 0 } };
  const { [active.field]: before, ...others } = numbers;
  const n = numberAfter(before, key);
  return { numbers: n === undefined ? others : { ...others, [active.field]: n } };
}

/** What cannot be seen with that look is not kept. */
function seenWith(counting: Counting, look: Look, stage: Stage): Counting {
  const seen = fieldsFor(stage, look);
  const numbers: Numbers = Object.fromEntries(Object.entries(counting.numbers).filter(([field]) => seen.some((one) => one === field)));
  const isSeen = 'cause' in counting.active || seen.includes(counting.active.field);
  return { ...counting, look, numbers, active: isSeen ? counting.active : { field: 'alive' } };
}
