import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import type { ToKeep, Work } from '../../lib/phone/outbox-item.ts';
import { useSayingWords } from '../../ui/ledger/saying-words.tsx';
import type { KnownHere } from './known-here.ts';
import { workKind } from './work-kind.ts';

/** What somebody meant to tell, in words that another person can act upon. */
export interface Meant {
  readonly what: string;
  readonly about: string;
  /** Day and time; nothing of what has none. */
  readonly when: string | undefined;
  readonly who: string;
  readonly note: string | undefined;
}

type Fields = Readonly<Record<string, string>>;

/** Reads what lies in the outbox to people, with the names that this phone knows. */
export function useMeant({ names, placeOf, own }: KnownHere): (item: ToKeep) => Meant {
  const t = useTranslations('outbox');
  const { entries, trips, donorTrees, act } = useMessages();
  const say = useSayingWords((id) => names.get(id));
  const kinds: Fields = entries.kinds;
  const fields: Fields = { ...donorTrees.fields, ...trips.fields, code: act.label };
  const choices: Readonly<Record<string, Fields>> = { sex: donorTrees.sex, ageClass: donorTrees.ageClass, state: donorTrees.state, shoot: trips.shoot, foliage: trips.foliage, base: trips.base };

  function entrySaid({ saying }: EntryToSend): string {
    // A file of another phone may hold anything.
    const said = orNothing(() => say(saying));
    const { bundleId, label, container, medium, recipeVersionId, entryId } = saying as Readonly<Record<string, string | undefined>>;
    const target = entryId === undefined ? undefined : own.get(entryId);
    return [
      `${kinds[saying.kind] ?? saying.kind}: ${said}`,
      bundleId && names.get(bundleId), recipeVersionId && names.get(recipeVersionId),
      label && `${act.label}: ${label}`, container && `${act.container}: ${container}`, medium && `${act.medium}: ${medium}`,
      target?.work.kind === 'entry' && t('meant.earlier', { what: entrySaid(target.work.entry) }),
    ].filter(Boolean).join(', ');
  }

  /** Fields that have words, and no others: a sealed place stays sealed, ids stay out. */
  function recordSaid(body: unknown): string {
    const told = Object.entries(Object(body) as Record<string, unknown>).flatMap(([name, value]) => {
      const words = fields[name];
      if (words === undefined || (typeof value !== 'string' && typeof value !== 'number')) return [];
      const text = String(value);
      return [`${words}: ${choices[name]?.[text] ?? names.get(text) ?? nameOfOwn(text) ?? (name.endsWith('On') ? sayDay(text) : text)}`];
    });
    return told.join(', ');
  }
  const nameOfOwn = (id: string): string | undefined => own.get(id)?.about;

  function whatOf(work: Work): string {
    if (work.kind === 'entry') return entrySaid(work.entry);
    const kind = t(`kinds.${workKind(work)}`);
    return work.kind === 'record' ? [kind, recordSaid(work.body)].filter(Boolean).join(': ') : kind;
  }

  return ({ about, author, work }) => {
    const entry = work.kind === 'entry' ? work.entry : undefined;
    const batchId = entry && 'batchId' in entry.saying ? entry.saying.batchId : undefined;
    const seen = entry?.seenBy === undefined ? undefined : names.get(entry.seenBy);
    return {
      what: whatOf(work),
      about: [about, batchId !== undefined && placeOf.get(batchId)].filter(Boolean).join(', '),
      when: entry ? momentOf(entry) : takenOn(work),
      who: seen && seen !== author.name ? t('meant.seen', { seen, name: author.name }) : t('meant.logged', { name: author.name }),
      note: entry?.note,
    };
  };
}

/** What an entry says; of other things their kind says enough in a list. */
export function useSaid(known: KnownHere): (item: ToKeep) => string | undefined {
  const meant = useMeant(known);
  return (item) => {
    const saying = item.work.kind === 'entry' ? item.work.entry.saying : undefined;
    // A note for the coordinator repeats all that stands with what it is about.
    return saying === undefined || (saying.kind === 'noted' && saying.notBooked !== undefined) ? undefined : meant(item).what;
  };
}

function momentOf({ observedOn, minute }: EntryToSend): string {
  const time = minute === undefined ? '' : `, ${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
  return `${orNothing(() => sayDay(observedOn)) || observedOn}${time}`;
}

function takenOn(work: Work): string | undefined {
  const day = work.kind === 'photo' ? new URLSearchParams(work.path.split('?')[1]).get('takenOn') : undefined;
  return day ? sayDay(day) : undefined;
}

function orNothing(say: () => string): string {
  try {
    return say();
  } catch {
    return '';
  }
}
