import type { WorkListKind } from '@sprigline/domain';
import { isTicked, number as numberIn, text } from '../../lib/form-values.ts';
import { asksContainer, movesPlants, nameOf, NUMBERS, TICKS, type TypedField, typedFields } from './typed-fields.ts';

export interface LineSaid {
  readonly number: number;
  readonly [told: string]: unknown;
}

/** Places by what they are called in the list of the field, in small letters. */
export type PlacesByWords = ReadonlyMap<string, string>;

/**
 * The lines of a form on which something was typed, as the API wants them.
 *
 * @param lines printed numbers of lines that can be typed
 * @returns with the numbers of lines that name a place which is not there
 */
export function linesSaid(form: FormData, kind: WorkListKind, lines: readonly number[], places: PlacesByWords): { said: LineSaid[]; lost: number[] } {
  const fields = typedFields(kind);
  const lost: number[] = [];
  const said = lines.flatMap((number): LineSaid[] => {
    if (!fields.some((field) => field !== 'cause' && isTyped(form, number, field))) return [];
    const elsewhere = text(form, nameOf(number, 'placeId'));
    const placeId = elsewhere === undefined ? text(form, 'placeId') : places.get(elsewhere.toLowerCase());
    if (elsewhere !== undefined && placeId === undefined) {
      lost.push(number);
      return [];
    }
    const own = Object.fromEntries(fields.flatMap((field) => valueOf(form, number, field)));
    const goesOn = [own['lifted'], own['potted'], own['planted'], own['moved']].some((told) => told !== undefined);
    const there = goesOn && movesPlants(kind) ? { placeId, ...(asksContainer(kind) ? { container: text(form, 'container') } : {}) } : {};
    return [{ number, ...own, ...there }];
  });
  return { said, lost };
}

const isTyped = (form: FormData, number: number, field: TypedField): boolean => (TICKS.has(field) ? isTicked(form, nameOf(number, field)) : text(form, nameOf(number, field)) !== undefined);

function valueOf(form: FormData, number: number, field: TypedField): [string, unknown][] {
  const name = nameOf(number, field);
  if (!isTyped(form, number, field) || field === 'placeId' || field === 'cause') return [];
  if (field === 'dead') return deadIn(form, number);
  if (NUMBERS.has(field)) return [[field, numberIn(form, name)]];
  if (TICKS.has(field)) return [[field, true]];
  if (field === 'positions') return [[field, (text(form, name) ?? '').split(/[,;]/).map((one) => one.trim()).filter((one) => one !== '')]];
  return [[field, text(form, name)]];
}

/** A nought says that none is dead: nothing to write. */
function deadIn(form: FormData, number: number): [string, unknown][] {
  const n = numberIn(form, nameOf(number, 'dead'));
  const cause = text(form, nameOf(number, 'cause'));
  return n === 0 ? [] : [['dead', [{ n, cause, certainty: 'seen' }]]];
}
