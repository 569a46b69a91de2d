import { labelRun, positionRun, tagPlants, type Tagged } from '@sprigline/domain';
import { number, text } from '../../lib/form-values.ts';
import { lineField } from '../../lib/line-field.ts';

/**
 * Which plant gets which tag and position, as a form of planting says it. The same in the browser and on the server.
 *
 * @throws DomainError as labelRun, positionRun and tagPlants do
 */
export function taggedOf(form: FormData, lines: number): Tagged[] {
  const parts = Array.from({ length: lines }, (_, at) => ({ batchId: text(form, lineField(at, 'batchId')) ?? '', n: wholeOr0(number(form, lineField(at, 'n'))) }));
  return tagPlants(parts, labelRun(text(form, 'labels') ?? ''), positionRun(text(form, 'positions') ?? ''));
}

const wholeOr0 = (value: ReturnType<typeof number>): number => (typeof value === 'number' && Number.isSafeInteger(value) && value > 0 ? value : 0);
