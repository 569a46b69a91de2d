/** Rounds under way, as this phone keeps them: one for each person and place. */

const stem = (programme: string): string => `sprigline/round/2/${programme}/`;

export const draftKey = (programme: string, placeId: string, personId: string): string => `${stem(programme)}${placeId}/${personId}`;

export interface KeptRound {
  readonly placeId: string;
  /** How many batches have an answer. */
  readonly answered: number;
  /** The day that it is told for. */
  readonly day: string;
}

/**
 * The rounds that a person has begun in a programme and not sent.
 *
 * @param storage of the browser; what is not a round of ours, or cannot be read, is left out
 */
export function keptRounds(storage: Pick<Storage, 'length' | 'key' | 'getItem'>, programme: string, personId: string): KeptRound[] {
  const keys = Array.from({ length: storage.length }, (_, at) => storage.key(at) ?? '');
  return keys.filter((key) => key.startsWith(stem(programme)) && key.endsWith(`/${personId}`)).flatMap((key) => {
    const placeId = key.slice(stem(programme).length, -personId.length - 1);
    try {
      const { answers, day } = JSON.parse(storage.getItem(key) ?? '{}') as { answers?: object; day?: string };
      const answered = Object.keys(answers ?? {}).length;
      return answered > 0 && day ? [{ placeId, answered, day }] : [];
    } catch {
      return [];
    }
  });
}
