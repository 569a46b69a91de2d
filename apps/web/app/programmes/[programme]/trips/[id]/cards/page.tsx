import { getMessages, getTranslations } from 'next-intl/server';
import { CardTable } from '../../../../../../features/tray-card/card-table.tsx';
import { cardsOfTrip } from '../../../../../../features/tray-card/cards-of-trip.ts';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { recipesOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { buttonClass } from '../../../../../../ui/button-class.ts';
import { Empty } from '../../../../../../ui/empty.tsx';
import { INPUT } from '../../../../../../ui/form/input-class.ts';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../../ui/section.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

interface CardsPageProps {
  readonly params: Promise<{ programme: string; id: string }>;
  readonly searchParams: Promise<{ per?: string; recipe?: string }>;
}

export const generateMetadata = titled(({ trayCards }) => trayCards.title);

export default async function CardsPage({ params, searchParams }: CardsPageProps) {
  const [{ programme, id }, { per, recipe }] = await Promise.all([params, searchParams]);
  const [{ trip, toCome, stuck, most }, recipes, { trayCards: said, trips }, t] = await Promise.all([
    cardsOfTrip(programme, id, { per, recipe }), recipesOf(programme), getMessages(), getTranslations('trayCards'),
  ]);
  const asked = new URLSearchParams({ ...(most === undefined ? {} : { per: String(most) }), ...(recipe ? { recipe } : {}) });
  const pdfs = (which: 'left' | 'stuck') => (
    <p className="mt-3 flex flex-wrap gap-x-6">
      {(['A4', 'Letter'] as const).map((paper) => <a key={paper} href={`${pageOf(programme, 'trips', id, 'cards', 'pdf')}?${asked}&which=${which}&paper=${paper.toLowerCase()}`} className="inline-flex min-h-8 items-center underline">{t('pdf', { paper })}</a>)}
    </p>
  );
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'trips'), words: trips.title }, { href: pageOf(programme, 'trips', id), words: t('foot', { stand: trip.stand.name, day: sayDay(trip.wentOn) }) }]} />
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      {trip.bundles.length === 0 && <Empty>{said.none}</Empty>}
      {toCome.length > 0 && (
        <Section heading={said.left} lead={said.leftLead}>
          <form method="get" className="not-on-paper mb-6 flex flex-wrap items-end gap-3">
            <label>
              <span className="block font-semibold">{said.fields.per}</span>
              <span id="per-hint" className="block text-sm text-ink-soft">{said.perHint}</span>
              <input name="per" inputMode="numeric" autoComplete="off" defaultValue={most ?? ''} aria-describedby="per-hint" className={`${INPUT} max-w-40`} />
            </label>
            <label className="grow sm:grow-0">
              <span className="block font-semibold">{said.fields.recipe}</span>
              <select name="recipe" defaultValue={recipe ?? ''} className={`${INPUT} sm:w-72`}>
                <option value="">{said.toWrite}</option>
                {recipes.map((one) => <option key={one.id} value={one.id}>{one.name}</option>)}
              </select>
            </label>
            <button className={buttonClass('quiet')}>{said.show}</button>
          </form>
          <CardTable caption={said.left} cards={toCome} />
          {pdfs('left')}
        </Section>
      )}
      {stuck.length > 0 && <Section heading={said.stuck}><CardTable caption={said.stuck} cards={stuck} />{pdfs('stuck')}</Section>}
    </>
  );
}
