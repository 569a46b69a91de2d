/**
 * The books of the year as somebody with a pencil would keep them: a line for each plant, and on it
 * what became of it, step by step. Slow, simple, and without a thought of how the product does it.
 */

export type Stage = 'cutting' | 'liner' | 'potted' | 'planted';
export const STAGES: readonly Stage[] = ['cutting', 'liner', 'potted', 'planted'];

export type Origin = 'stuck' | 'received' | 'found';

export interface Step {
  /** Nothing while it stands among mixed plants. */
  readonly sticking: string | undefined;
  readonly stage: Stage;
  readonly how: 'came' | 'mixedIn';
  /** `here`, `goneOn`, `died rot`, `unaccounted` … */
  end: string;
}

export interface Plant {
  readonly donor: string | undefined;
  readonly origin: Origin;
  /** The sticking it truly came from, also while nobody can tell. */
  readonly from: string;
  batch: string;
  /** The batches it was in before. */
  readonly before: string[];
  notFound: boolean;
  readonly steps: Step[];
}

export interface BatchLine {
  readonly id: string;
  readonly stage: Stage;
  place: string;
  held: boolean;
}

export class PlantList {
  readonly plants: Plant[] = [];
  readonly batches = new Map<string, BatchLine>();
  /** From which batches plants came into a batch. */
  readonly parents = new Map<string, Set<string>>();
  /** Of which wild trees the plants of a batch may be, where that is all that is known. */
  readonly candidates = new Map<string, readonly string[]>();

  /** Plants of a batch that are here. */
  in = (batch: string): Plant[] => this.plants.filter((plant) => plant.batch === batch && last(plant).end === 'here');

  count = (batch: string): number => this.in(batch).length;

  open(id: string, stage: Stage, place: string, held = false): void {
    if (!this.batches.has(id)) this.batches.set(id, { id, stage, place, held });
  }

  come(batch: string, sticking: string, donor: string | undefined, stage: Stage, n: number, place: string, origin: Origin = 'stuck', held = false): void {
    this.open(batch, stage, place, held);
    for (let at = 0; at < n; at += 1) this.plants.push({ donor, origin, from: sticking, batch, before: [], notFound: false, steps: [{ sticking, stage, how: 'came', end: 'here' }] });
  }

  end(batch: string, n: number, end: string): void {
    for (const plant of this.#take(batch, n)) {
      last(plant).end = end;
      plant.notFound = false;
    }
  }

  /** Plants that were missing stand there again. */
  comeBack(batch: string, n: number): void {
    const missing = this.plants.filter((plant) => plant.batch === batch && last(plant).end === 'unaccounted');
    if (missing.length < n) throw new Error(`no ${n} plants of ${batch} are missing`);
    for (const plant of missing.slice(0, n)) last(plant).end = 'here';
  }

  goOn(batch: string, to: string, stage: Stage, n: number, place: string): void {
    this.open(to, stage, place);
    for (const plant of this.#take(batch, n)) {
      const { sticking } = last(plant);
      last(plant).end = 'goneOn';
      // A stage that is skipped was come to and gone on from all the same.
      const skipped = STAGES.slice(STAGES.indexOf(this.#line(batch).stage) + 1, STAGES.indexOf(stage));
      for (const between of skipped) plant.steps.push({ sticking, stage: between, how: 'came', end: 'goneOn' });
      plant.steps.push({ sticking, stage, how: 'came', end: 'here' });
      this.#carry(plant, to);
    }
  }

  /** To another batch of the same sticking and stage: nothing becomes of them by that. */
  split(batch: string, to: string, n: number, place: string): void {
    this.open(to, this.#line(batch).stage, place);
    for (const plant of this.#take(batch, n)) this.#carry(plant, to);
  }

  mix(parts: readonly (readonly [batch: string, n: number])[], to: string, place: string): void {
    const [first] = parts;
    this.open(to, this.#line(first?.[0] ?? '').stage, place);
    for (const [batch, n] of parts) {
      for (const plant of this.#take(batch, n)) this.#change(plant, 'mixed', undefined, to);
    }
  }

  /** Of mixed plants n turn out to be of that sticking, which they truly are. */
  identify(batch: string, sticking: string, to: string, n: number, place: string): void {
    this.open(to, this.#line(batch).stage, place);
    const found = this.in(batch).filter(({ from }) => from === sticking).slice(0, n);
    if (found.length < n) throw new Error(`no ${n} plants of that sticking are in ${batch}`);
    for (const plant of found) this.#change(plant, 'mixed', sticking, to);
  }

  missAtCheck(batch: string, n: number): void {
    const here = this.in(batch);
    for (const plant of here) plant.notFound = false;
    for (const plant of here.slice(0, n)) plant.notFound = true;
  }

  /** Everything that plants of a batch may have come from, or may have gone to. */
  kin(batch: string, way: 'from' | 'to'): Set<string> {
    const next = (one: string): string[] => (way === 'from' ? [...(this.parents.get(one) ?? [])] : [...this.parents].filter(([, from]) => from.has(one)).map(([to]) => to));
    const found = new Set<string>();
    for (let row = next(batch); row.length > 0; row = row.flatMap(next)) row.forEach((one) => found.add(one));
    return found;
  }

  /** Wild trees of plants that were ever in one of these batches, and those that they may be of. */
  treesOf(batches: readonly string[]): Set<string> {
    const own = this.plants.filter(({ batch, before }) => batches.includes(batch) || before.some((one) => batches.includes(one)));
    return new Set([...own.flatMap(({ donor }) => donor ?? []), ...batches.flatMap((batch) => this.candidates.get(batch) ?? [])]);
  }

  hold(batch: string, isHeld: boolean): void {
    this.#line(batch).held = isHeld;
  }

  move(batch: string, place: string): void {
    this.#line(batch).place = place;
  }

  #change(plant: Plant, end: string, sticking: string | undefined, to: string): void {
    const { stage } = last(plant);
    last(plant).end = end;
    plant.steps.push({ sticking, stage, how: 'mixedIn', end: 'here' });
    this.#carry(plant, to);
  }

  #carry(plant: Plant, to: string): void {
    this.parents.set(to, (this.parents.get(to) ?? new Set()).add(plant.batch));
    plant.before.push(plant.batch);
    plant.batch = to;
  }

  #take(batch: string, n: number): Plant[] {
    const here = this.in(batch);
    if (here.length < n) throw new Error(`the script takes ${n} of ${here.length} plants`);
    return here.slice(0, n);
  }

  #line(batch: string): BatchLine {
    const line = this.batches.get(batch);
    if (!line) throw new Error(`the script knows no batch ${batch}`);
    return line;
  }
}

export function last(plant: Plant): Step {
  const step = plant.steps.at(-1);
  if (!step) throw new Error('a plant that never came');
  return step;
}

/** What the tally of a sticking at a stage must be. */
export function tallyOf(plants: readonly Plant[], sticking: string, stage: Stage) {
  const steps = plants.flatMap((plant) => plant.steps.map((step) => ({ ...step, plant }))).filter((step) => step.sticking === sticking && step.stage === stage);
  const ended = (end: string): number => steps.filter((step) => step.end === end).length;
  const died: Record<string, number> = {};
  for (const { end } of steps) if (end.startsWith('died ')) died[end.slice(5)] = (died[end.slice(5)] ?? 0) + 1;
  return {
    cameIn: steps.filter(({ how }) => how === 'came').length, mixedIn: steps.filter(({ how }) => how === 'mixedIn').length,
    goneOn: ended('goneOn'), died, unaccounted: ended('unaccounted'), notRooted: ended('notRooted'), thrownOut: ended('thrownOut'), givenOut: ended('givenOut'),
    restuck: ended('restuck'), mixed: ended('mixed'), here: ended('here'), notFound: steps.filter(({ end, plant }) => end === 'here' && plant.notFound).length,
  };
}
