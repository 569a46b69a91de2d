import { getTranslations } from 'next-intl/server';
import { cardLeadsTo, cardsOfTrip } from '../../../../../../../features/tray-card/cards-of-trip.ts';
import { CardsPdf } from '../../../../../../../features/tray-card/cards-pdf.tsx';
import { sayDay } from '../../../../../../../lib/calendar.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { publicAddress } from '../../../../../../../lib/public-address.ts';
import { paperOf } from '../../../../../../../ui/paper/paper-size.ts';
import { pdfAnswer } from '../../../../../../../ui/paper/pdf-answer.ts';

/** Cards of a trip to cut out: `?which=stuck` those of filled trays, else those for what is still to be stuck. */
export async function GET(request: Request, { params }: { params: Promise<{ programme: string; id: string }> }): Promise<Response> {
  const { programme, id } = await params;
  const asked = new URL(request.url).searchParams;
  const [{ trip, toCome, stuck }, t, address] = await Promise.all([
    cardsOfTrip(programme, id, { per: asked.get('per') ?? undefined, recipe: asked.get('recipe') ?? undefined }), getTranslations('trayCards'), publicAddress(),
  ]);
  const foot = t('foot', { stand: trip.stand.name, day: sayDay(trip.wentOn) });
  const cards = (asked.get('which') === 'stuck' ? stuck : toCome).map((card) => ({ ...card, stuckOn: card.stuckOn && sayDay(card.stuckOn) }));
  return pdfAnswer(
    <CardsPdf
      paper={paperOf(asked)}
      title={t('title')}
      cards={cards}
      foot={foot}
      leadsTo={(card) => cardLeadsTo(address, pageOf(programme, 'batches'), card)}
      words={{ label: t('card.label'), cuttings: (n) => t('card.cuttings', { n }), recipe: t('card.recipe'), tray: t('card.tray'), rows: t('card.rows'), day: t('card.day'), initials: t('card.initials') }}
    />,
    `${t('title')} ${foot}`,
  );
}
