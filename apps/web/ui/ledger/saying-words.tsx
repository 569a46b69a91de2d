import type { Saying, Tap, TapAnswer } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import type { EntryToSend } from '../../lib/entry-to-send.ts';

/** As it is kept, or as it is about to be sent: then what has a usual value may be missing. */
type Said = Saying | EntryToSend['saying'];
type Plain = Exclude<Said, { kind: 'withdrawn' | 'replaced' }>;

const TAPS: readonly Tap[] = ['lights', 'air', 'heat', 'lid', 'mould'];

/**
 * What an entry says, in a sentence without its kind: "34 alive, 12 rooted (tugged gently)".
 *
 * @param nameOf what a batch or a place is called, by its id; nothing where it is not known
 */
export function useSayingWords(nameOf: (id: string) => string | undefined): (said: Said) => string {
  const t = useTranslations('entries.said');
  const looks = useTranslations('entries.looks');
  const { entries } = useMessages();

  function dead(list: readonly { n: number; cause: string }[] = []): string[] {
    return list.map(({ n, cause }) => t('dead', { n, cause }));
  }
  const conditions = (told: Partial<Record<Tap, TapAnswer>>): string[] => TAPS.flatMap((tap) => (told[tap] ? [`${entries.taps[tap]}: ${entries.tapAnswers[told[tap]]}`] : []));
  const to = (id: string | undefined) => (id === undefined ? undefined : nameOf(id));

  function plain(said: Plain): (string | undefined | false)[] {
    switch (said.kind) {
      case 'counted':
        return [t(said.sampleOf === undefined ? 'alive' : 'aliveOf', { n: said.alive, of: said.sampleOf ?? 0 }), said.rooted !== undefined && t('rooted', { n: said.rooted }), said.callused !== undefined && t('callused', { n: said.callused }), ...dead(said.dead), looks(said.look)];
      case 'checked':
        return [t('alive', { n: said.alive }), ...dead(said.dead), (said.notFound ?? 0) > 0 && t('notFound', { n: said.notFound ?? 0 }), (said.notLooked ?? 0) > 0 && t('notLooked', { n: said.notLooked ?? 0 })];
      case 'died':
        return [String(said.n), said.cause];
      case 'thrownOut': case 'found':
        return [String(said.n), said.reason];
      case 'lifted': case 'potted': case 'planted': case 'restuck': case 'identified':
        return [String(said.n), t('to', { what: to(said.toBatchId) ?? t('anotherBatch') }), to(said.placeId), 'leavesNone' in said && said.leavesNone && t('leavesNone')];
      case 'moved':
        return [said.n === undefined ? t('all') : String(said.n), said.toBatchId !== undefined && t('to', { what: to(said.toBatchId) ?? t('anotherBatch') }), to(said.placeId)];
      case 'givenOut':
        return [String(said.n), said.outside ?? t('toPartner')];
      case 'stuck': case 'received':
        return [String(said.n), to(said.placeId), said.rows && t('rows', { rows: said.rows }), ...('damaged' in said ? (said.damaged ?? []).map(({ n, how }) => t('damaged', { n, how })) : [])];
      case 'called':
        return [String(said.n)];
      case 'mixed':
        return [t('fromBatches', { n: said.parts.length })];
      case 'held': case 'released':
        return [said.reason, said.result];
      case 'treated':
        return [entries.treatments[said.what], said.product, said.registration, said.rate, said.appliedBy];
      case 'incident':
        return [entries.incidents[said.what], entries.severities[said.severity], said.detail];
      case 'noted':
        return [said.lookedOver && entries.nothingToReport, said.text, ...conditions(said.conditions ?? {}), said.measured && `${said.measured.what} ${said.measured.value} ${said.measured.unit}`];
    }
  }

  return (said) => (said.kind === 'withdrawn' ? said.reason : plain(said.kind === 'replaced' ? said.instead.saying : said).filter(Boolean).join(', '));
}
