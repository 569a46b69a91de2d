import type { CompareBy, TrialLayout } from '@sprigline/contract';
import { useFormatter, useMessages, useTranslations } from 'next-intl';
import { Caution } from '../../ui/caution.tsx';
import { HowWorked } from '../../ui/how-worked.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';
import { groupName } from './group-name.ts';
import { chosenSize, in100, inAll, isOfHormone, sizeSaid } from './trial-said.ts';

interface TrialSectionProps {
  readonly layout: TrialLayout;
  readonly by: CompareBy;
  /** The same with other dice; as a table; and on paper. */
  readonly again: string;
  readonly csv: string;
  readonly pdf: string;
}

/** How to stick next year so that the question is answered: how many of each tree, in which order. Printed with the page. */
export function TrialSection({ layout, by, again, csv, pdf }: TrialSectionProps) {
  const words = useMessages();
  const { trial: said, worked } = words.comparison;
  const t = useTranslations('comparison.trial');
  const names = { first: groupName(layout.first, by, words), second: groupName(layout.second, by, words) };
  return (
    <div id="trial">
      <Section heading={t('heading', names)} lead={by === 'place' ? said.leadPlace : said.lead}>
        {layout.blocks.length === 0 ? <p>{said.noTrees}</p> : (
          <>
            <TrialSizes layout={layout} />
            {isOfHormone(by) && <div className="mb-6"><Caution>{words.recipes.caution}</Caution></div>}
            <Table
              caption={said.order}
              rows={layout.blocks}
              keyOf={({ donor }) => donor}
              columns={[
                { head: said.tree, cell: ({ donor }) => <span className="whitespace-nowrap">{donor}</span> },
                { head: said.first, cell: ({ order: [arm] }) => arm && names[arm] },
                { head: said.second, cell: ({ order: [, arm] }) => arm && names[arm] },
                { head: said.done, cell: () => <span className="inline-block size-5 border-2 border-line-strong" aria-hidden /> },
              ]}
            />
            <div className="mt-3 text-sm">
              <HowWorked said={worked.trial} />
              <p className="not-on-paper flex flex-wrap gap-x-6">
                <RowLink href={again}>{said.again}</RowLink>
                <a href={pdf} className="inline-flex min-h-8 items-center underline">{said.print}</a>
                <a href={`${pdf}&paper=letter`} className="inline-flex min-h-8 items-center underline">{said.printLetter}</a>
                <a href={csv} className="inline-flex min-h-8 items-center underline">{said.csv}</a>
              </p>
            </div>
          </>
        )}
      </Section>
    </div>
  );
}

function TrialSizes({ layout }: { layout: TrialLayout }) {
  const { usual, sizes } = layout;
  const { comparison: { trial: said } } = useMessages();
  const t = useTranslations('comparison.trial');
  const { number } = useFormatter();
  return (
    <>
      {chosenSize(layout) && <p className="mb-2 max-w-prose text-lg">{sizeSaid(layout, t)}</p>}
      <p className="mb-4 max-w-prose text-ink-soft">{t('reckoned', { share: in100(usual.share), donors: usual.donors })}</p>
      <div className="mb-6 max-w-xl">
        <Table
          caption={said.sizes}
          rows={sizes}
          keyOf={(size) => String(size.cuttingsEach)}
          columns={[
            { head: said.each, isNumber: true, cell: (size) => number(size.cuttingsEach) },
            { head: said.inAll, isNumber: true, cell: (size) => number(inAll(size.cuttingsEach, layout)) },
            { head: said.chance, isNumber: true, cell: ({ chance }) => t('of100', { chance: in100(chance) }) },
          ]}
        />
      </div>
    </>
  );
}
