import { IncidentShown, Treatments } from '@sprigline/contract';
import type { Ground } from './beginning.ts';
import type { Diary } from './diary.ts';
import type { Tray } from './winter.ts';

/** What went wrong in winter shows on every batch that stood there, and nowhere else; so does what was done about it. */
export async function wentWrong(diary: Diary, ground: Ground, trays: readonly Tray[]): Promise<void> {
  const told = async (query: string): Promise<string[]> =>
    IncidentShown.array().parse(await diary.get(`incidents?${query}`, diary.volunteer(4))).map(({ what, from, until }) => `${what} ${from} ${until}`);
  const timer = 'timerFailed 2025-12-10 2025-12-12';
  const mould = 'mould 2026-01-17 2026-01-17';
  diary.compare('what went wrong in winter', await told('state=over'), [mould, timer]);
  diary.compare('where the tray with the mould stood', await told(`batchId=${trays[7]?.batch}`), [mould, timer]);
  diary.compare('where the tray beside it stood', await told(`batchId=${trays[8]?.batch}`), [timer]);
  diary.compare('where nothing stood', await told(`placeId=${ground.potBench}`), []);
  const { treatments } = Treatments.parse(await diary.get(`treatments?placeId=${ground.bench}`, diary.volunteer(4)));
  diary.compare('what was done about it', treatments.map(({ what, place, observedOn }) => `${what} ${place?.name} ${observedOn}`), ['vented Tray 8 2026-01-17']);
}
