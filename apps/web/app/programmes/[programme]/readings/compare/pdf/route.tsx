import { TrialLayout } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { addressOf, askedIn } from '../../../../../../features/comparison/comparison-address.ts';
import { groupName } from '../../../../../../features/comparison/group-name.ts';
import { TrialPaper } from '../../../../../../features/comparison/trial-paper.tsx';
import { chosenIn } from '../../../../../../features/reading/reading-address.ts';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { read } from '../../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { paperOf } from '../../../../../../ui/paper/paper-size.ts';
import { PaperSheet } from '../../../../../../ui/paper/paper-sheet.tsx';
import { pdfAnswer } from '../../../../../../ui/paper/pdf-answer.ts';

/** The order of next year's trial as PDF, to take to the bench. */
export async function GET(request: Request, { params }: { params: Promise<{ programme: string }> }): Promise<Response> {
  const { programme } = await params;
  const search = new URL(request.url).searchParams;
  const { by, seed } = askedIn(Object.fromEntries(search));
  const { placeId: _, ...chosen } = chosenIn(Object.fromEntries(search));
  const query = addressOf({ ...chosen, by, first: search.get('first') ?? '', second: search.get('second') ?? '', seed: String(seed) });
  const [layout, { name, today }, words, t, tPaper] = await Promise.all([
    read(`${apiOf(programme, 'readings', 'comparison', 'layout')}${query}`, TrialLayout), workplaceOf(programme), getMessages(), getTranslations('comparison.trial'), getTranslations('comparison.paper'),
  ]);
  const names = { first: groupName(layout.first, by, words), second: groupName(layout.second, by, words) };
  const title = t('heading', names);
  return pdfAnswer(
    <PaperSheet paper={paperOf(search)} language="en" title={title} more={tPaper('more', { programme: name, seed })} foot={tPaper('asOf', { programme: name, day: sayDay(today) })} pageOf={(page, pages) => tPaper('page', { page, pages })}>
      <TrialPaper layout={layout} by={by} names={names} said={words.comparison} caution={words.recipes.caution} t={t} />
    </PaperSheet>,
    title,
  );
}
