import { CompareBy, Comparison, ReadingChoices, RootingCurves, TrialLayout } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { CompareForm } from '../../../../../features/comparison/compare-form.tsx';
import { ComparedParts, pairForTrial } from '../../../../../features/comparison/compared-parts.tsx';
import { addressOf, askedIn, curvesBy, FOR_PARTNERS, queryFor } from '../../../../../features/comparison/comparison-address.ts';
import { CurvesPart } from '../../../../../features/comparison/curves-part.tsx';
import { groupName } from '../../../../../features/comparison/group-name.ts';
import { TrialSection } from '../../../../../features/comparison/trial-section.tsx';
import { AsOf } from '../../../../../features/reading/as-of.tsx';
import { ChosenWords } from '../../../../../features/reading/chosen-words.tsx';
import { chosenIn, queryOf, type Search } from '../../../../../features/reading/reading-address.ts';
import { RootingFigure } from '../../../../../features/time-to-root/rooting-figure.tsx';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ comparison }) => comparison.title);

/** What made the difference, as far as the books can tell. */
export default async function ComparePage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const search = await searchParams;
  const isPartner = (await workplaceOf(programme)).role === 'partner';
  const bys = isPartner ? FOR_PARTNERS : CompareBy.options;
  const asked = askedIn(search, bys);
  // Where plants stand now would keep the survivors, and none of the others.
  const { placeId: _, ...chosen } = chosenIn(search);
  const query = queryFor(asked, chosen);
  const api = (...parts: readonly string[]): string => apiOf(programme, 'readings', ...parts);
  const over = isPartner ? undefined : curvesBy(asked.by);
  const curveQuery = addressOf({ ...chosen, by: over ?? 'all' });
  const [comparison, choices, curves, words] = await Promise.all([
    read(`${api('comparison')}${addressOf(query)}`, Comparison), read(api('choices'), ReadingChoices),
    over && read(`${api('time-to-root')}${curveQuery}`, RootingCurves), getMessages(),
  ]);
  const { comparison: said, readings } = words;
  const pair = isPartner ? undefined : pairForTrial(comparison, asked.trial);
  const trial = pair && { ...chosen, by: asked.by, first: pair.first, second: pair.second, seed: String(asked.seed) };
  const layout = trial && (await read(`${api('comparison', 'layout')}${addressOf(trial)}`, TrialLayout));
  return (
    <>
      <Trail steps={[{ href: `${pageOf(programme, 'readings', ...(isPartner ? ['funnels'] : []))}${queryOf(chosen)}`, words: readings.title }]} />
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <CompareForm asked={asked} choices={choices} chosen={chosen} groups={comparison.groups} bys={bys} here={pageOf(programme, 'readings', 'compare')} isPartner={isPartner} />
      <p className="mb-2 hidden print:block">{said.fields.by}: {said.by[asked.by]}.</p>
      <ChosenWords choices={choices} chosen={chosen} />
      <AsOf {...comparison} />
      {comparison.groups.length === 0 ? <p>{said.nothing}</p> : <ComparedParts comparison={comparison} query={query} csv={`${api('comparison.csv')}${addressOf(query)}`} isPartner={isPartner} />}
      {curves && curves.groups.length > 0 && (
        <CurvesPart difference={curves.difference}>
          <RootingFigure curves={{ ...curves, groups: curves.groups.map((curve) => ({ ...curve, name: groupName(comparison.groups.find(({ key }) => key === curve.key) ?? { ...curve, hormone: null }, asked.by, words) })) }} isNamed csv={`${api('time-to-root.csv')}${curveQuery}`} />
        </CurvesPart>
      )}
      {layout && pair && (
        <TrialSection layout={layout} by={asked.by} again={`${addressOf({ ...query, trial: pair.first, seed: String(asked.seed + 1) })}#trial`} csv={`${api('comparison', 'layout.csv')}${addressOf(trial ?? {})}`} pdf={`${pageOf(programme, 'readings', 'compare', 'pdf')}${addressOf(trial ?? {})}`} />
      )}
    </>
  );
}
