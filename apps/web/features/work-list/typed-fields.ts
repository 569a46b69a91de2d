import { type AskedOnLine, askedOnList, type WorkListKind } from '@sprigline/domain';

/** What is typed on a line, in the order of the boxes on paper. Day, people, container stand once above. */
export type TypedField = Exclude<AskedOnLine, 'container'> | 'cause' | 'note';

export const NUMBERS: ReadonlySet<TypedField> = new Set<TypedField>(['alive', 'rooted', 'callused', 'dead', 'notFound', 'notLooked', 'lifted', 'potted', 'planted', 'called']);
export const TICKS: ReadonlySet<TypedField> = new Set<TypedField>(['moved', 'leavesNone']);

export function typedFields(kind: WorkListKind): readonly TypedField[] {
  return [...askedOnList(kind).flatMap((asked): TypedField[] => (asked === 'container' ? [] : asked === 'dead' ? ['dead', 'cause'] : [asked])), 'note'];
}

/** Where plants go stands once above, if the list moves any. */
export const movesPlants = (kind: WorkListKind): boolean => askedOnList(kind).includes('placeId');
export const asksContainer = (kind: WorkListKind): boolean => askedOnList(kind).includes('container');

export const nameOf = (number: number, field: TypedField | 'confirm'): string => `lines/${number}/${field}`;
