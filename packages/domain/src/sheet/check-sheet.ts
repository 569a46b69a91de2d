import { STAGES, type Stage } from '../ledger/entry.ts';
import { plainSpelling } from './plain-spelling.ts';
import type { SheetFact, SheetFault } from './sheet.ts';

/** What the programme knows already, by label. */
export interface KnownToProgramme {
  /** Batches by label: their stage and what sticking they are of. */
  readonly batches: ReadonlyMap<string, { readonly stage: Stage; readonly sticking: string }>;
  /** Donor trees by plain label. */
  readonly donors: ReadonlyMap<string, { readonly stand: string; readonly species: string }>;
}

interface Line {
  readonly stage: Stage;
  /** The sticking, or the label that opened it in this sheet. */
  readonly sticking: string;
  readonly row: number;
}

const STAGE_OF = { lifted: 'liner', potted: 'potted', planted: 'planted' } as const;

/**
 * Faults between rows: labels nobody made, labels made twice, donor trees in two
 * stands, plants gone back a stage. Rows may come in any order: the sheet was
 * typed late, by many hands.
 *
 * @param today the day in the programme's zone, `YYYY-MM-DD`
 */
export function checkSheet(facts: readonly SheetFact[], known: KnownToProgramme, today: string): SheetFault[] {
  const { lines, faults } = followLabels(facts, known);
  for (const fact of facts) {
    if (fact.day > today) faults.push({ row: fact.row, field: 'date', code: 'day-in-future', seen: fact.day });
    if (!lines.has(fact.label)) faults.push({ row: fact.row, field: 'label', code: 'label-unknown', seen: fact.label });
    const from = lines.get(fact.label);
    const to = toStage(fact);
    if (from && to && STAGES.indexOf(to) <= STAGES.indexOf(from.stage)) {
      faults.push({ row: fact.row, field: 'what', code: 'stage-gone-back', seen: fact.label, other: from.row });
    }
  }
  return [...faults, ...donorFaults(facts, known)].sort((a, b) => a.row - b.row);
}

const toStage = (fact: SheetFact): Stage | undefined => (STAGE_OF as Partial<Record<string, Stage>>)[fact.act];

/** What every label stands for, followed from the stickings on. */
function followLabels(facts: readonly SheetFact[], known: KnownToProgramme): { lines: Map<string, Line>; faults: SheetFault[] } {
  const faults: SheetFault[] = [];
  const lines = new Map<string, Line>([...known.batches].map(([label, batch]) => [label, { ...batch, row: 0 }]));
  const stuckBy = new Map<string, SheetFact>();
  for (const fact of facts) {
    if (fact.act !== 'stuck') continue;
    const first = stuckBy.get(fact.label);
    if (first) {
      const two = plainSpelling(first.donor ?? '') !== plainSpelling(fact.donor ?? '');
      faults.push({ row: fact.row, field: two ? 'donor' : 'label', code: two ? 'label-of-two-donors' : 'label-stuck-twice', seen: fact.label, other: first.row });
      continue;
    }
    stuckBy.set(fact.label, fact);
    lines.set(fact.label, lines.get(fact.label) ?? { stage: 'cutting', sticking: fact.label, row: fact.row });
  }
  // Stage by stage: a label made by potting up a lifted one may stand above it in the sheet.
  for (let round = 0; round < STAGES.length; round += 1) followOnce(facts, lines, round === STAGES.length - 1 ? faults : []);
  return { lines, faults };
}

function followOnce(facts: readonly SheetFact[], lines: Map<string, Line>, faults: SheetFault[]): void {
  for (const fact of facts) {
    const from = lines.get(fact.label);
    const stage = toStage(fact) ?? (fact.act === 'moved' ? from?.stage : undefined);
    if (!from || !stage || !fact.toLabel) continue;
    const there = lines.get(fact.toLabel);
    if (!there) lines.set(fact.toLabel, { stage, sticking: from.sticking, row: fact.row });
    else if (there.sticking !== from.sticking || there.stage !== stage) {
      faults.push({ row: fact.row, field: 'toLabel', code: 'label-of-another-sticking', seen: fact.toLabel, other: there.row });
    }
  }
}

function donorFaults(facts: readonly SheetFact[], known: KnownToProgramme): SheetFault[] {
  const faults: SheetFault[] = [];
  const seen = new Map<string, { stand: string; species: string; row: number }>([...known.donors].map(([label, donor]) => [label, { ...donor, row: 0 }]));
  for (const { row, donor, stand, species, act } of facts) {
    if (!donor || act !== 'stuck') continue;
    const before = seen.get(plainSpelling(donor));
    if (!before && !stand) faults.push({ row, field: 'stand', code: 'stand-missing', seen: donor });
    if (!before && !species) faults.push({ row, field: 'species', code: 'species-missing', seen: donor });
    if (before && stand && plainSpelling(stand) !== plainSpelling(before.stand)) {
      faults.push({ row, field: 'stand', code: 'donor-in-two-stands', seen: `${donor}: ${before.stand}, ${stand}`, other: before.row });
    }
    if (before && species && plainSpelling(species) !== plainSpelling(before.species)) {
      faults.push({ row, field: 'species', code: 'donor-of-two-species', seen: `${donor}: ${before.species}, ${species}`, other: before.row });
    }
    if (!before && stand && species) seen.set(plainSpelling(donor), { stand, species, row });
  }
  return faults;
}
