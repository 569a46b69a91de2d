import { useMessages, useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { minuteOfDay, today } from '../../lib/calendar.ts';
import { chime } from '../../lib/chime.ts';
import { keepTogether } from '../../lib/phone/keep-entries.ts';
import type { BooksOf } from '../../lib/phone/use-books-here.ts';
import { type Answer, entriesOf } from './answer.ts';
import { keepTapped, readTapped, type Tapped, tappedBefore } from './grid-before.ts';
import { answersOf, type Celled, celledOf, type Mark, tapped, withCause } from './grid-cells.ts';
import type { RoundProps } from './round-screen.tsx';
import { silentCells, withRest } from './grid-roots.ts';
import type { Look } from './stop.ts';
import { typingKey } from './typing.ts';
import type { Walk } from './use-round.ts';

export interface GridProps extends RoundProps {
  readonly walk: Walk;
  readonly booksOf: BooksOf;
  /** The stop from which one came. */
  readonly at: number;
}

export interface Grid extends Tapped {
  readonly celled: readonly Celled[];
  /** How the tray is looked at: a tug or a lift tells of roots. */
  readonly look: Look;
  readonly tap: (key: string) => void;
  readonly say: (mark: Mark) => void;
  /** Of all that were not tapped: they have no roots. */
  readonly sayRest: () => void;
  /** One more, or one less, than the books have. */
  readonly add: (batchId: string, n: 1 | -1) => void;
  readonly tell: (isAll: boolean) => void;
  /** What was told last, and where it is; nothing while one taps. */
  readonly told: { readonly answers: readonly Answer[]; readonly state: 'busy' | 'kept' | 'undone' | 'failed' } | undefined;
  readonly undo: () => void;
  readonly goOn: () => void;
}

/** A tray under the finger: what is tapped is kept on the phone while one taps, and goes to the outbox as one once it is told. */
export function useGrid({ programme, placeId: walkId, personId, zone, stops, at, booksOf, walk: { state: { where, draft }, step } }: GridProps): Grid {
  const placeId = stops[at]?.placeId ?? '';
  const t = useTranslations('round');
  const { causes } = useMessages().entries;
  const key = typingKey(`${programme}/${walkId}/${personId}`, `tray/${placeId}`);
  // As it was when one came: cells must not move under the finger.
  const [celled] = useState(() => celledOf(stops, placeId, (batchId) => booksOf(batchId, draft.kept[batchId]?.ids ?? []).ahead?.before.balance));
  const [cells, setCells] = useState(() => tappedBefore(celled, readTapped(window.localStorage, key, Date.now()), draft.answers));
  const [told, setTold] = useState<Grid['told']>();
  useEffect(() => keepTapped(window.localStorage, key, cells, Date.now()), [key, cells]);

  async function keep(answers: readonly Answer[], done: 'kept' | 'undone'): Promise<void> {
    setTold({ answers, state: 'busy' });
    try {
      const parts = answers.map((answer) => ({ about: answer.label, now: done === 'kept' ? entriesOf(answer, draft, { causes }) : [], before: draft.kept[answer.batchId] }));
      const kept = await keepTogether({ programme, reason: t('changedReason') }, parts);
      kept.forEach((one, nth) => step({ step: 'kept', of: answers[nth]?.batchId ?? '', kept: one }));
      setTold({ answers, state: done });
      chime(done);
    } catch {
      // Full, or switched off: it is still on the screen, and nowhere else.
      setTold({ answers, state: 'failed' });
      chime('failed');
    }
  }

  return {
    celled,
    look: draft.look,
    ...cells,
    told: told?.state === 'undone' ? undefined : told,
    tap: (cell) => setCells(({ marks, extras }) => ({ marks: tapped(marks, cell), extras })),
    say: (mark) => setCells(({ marks, extras }) => ({ marks: withCause(marks, mark), extras })),
    sayRest: () => setCells(({ marks, extras }) => ({ marks: withRest(marks, silentCells(celled, marks, extras, draft.look)), extras })),
    add: (batchId, n) => setCells((before) => withExtra(before, celled, batchId, n)),
    tell: (isAll) => {
      const minuteOf = (before: Answer | undefined) => (draft.day === today(zone) ? (before?.minute ?? minuteOfDay(zone)) : undefined);
      const answers = answersOf(celled, cells.marks, cells.extras, { look: draft.look, isAll, minuteOf, before: draft.answers });
      for (const answer of answers) step({ step: 'answer', answer, where });
      void keep(answers, 'kept');
    },
    undo: () => {
      for (const { batchId } of told?.answers ?? []) step({ step: 'forget', batchId });
      void keep(told?.answers ?? [], 'undone');
    },
    goOn: () => {
      const next = stops.findIndex(({ batchId }, nth) => nth > at && !draft.answers[batchId] && celled.every(({ stop }) => stop.batchId !== batchId));
      step({ step: 'go', where: next === -1 ? 'told' : next });
    },
  };
}

function withExtra({ marks, extras }: Tapped, celled: readonly Celled[], batchId: string, n: 1 | -1): Tapped {
  const before = extras[batchId] ?? 0;
  const last = `${batchId}/${(celled.find(({ stop }) => stop.batchId === batchId)?.n ?? 0) + before - 1}`;
  const { [last]: _, ...others } = marks;
  return { marks: n === 1 ? marks : others, extras: { ...extras, [batchId]: before + n } };
}
