import { LabelRollInList } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { ChooseLabels } from '../../../../features/label/choose-labels.tsx';
import { makeRoll } from '../../../../features/label/make-roll.action.ts';
import { sayMoment } from '../../../../lib/calendar.ts';
import { placesOf, standsOf } from '../../../../lib/lists.ts';
import { newId } from '../../../../lib/new-id.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { readPart } from '../../../../lib/pages.ts';
import { placeChoices } from '../../../../lib/place-path.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { ActionForm } from '../../../../ui/form/action-form.tsx';
import { choicesOf } from '../../../../ui/form/choices.ts';
import { TextField } from '../../../../ui/form/text-field.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';
import { Section } from '../../../../ui/section.tsx';
import { Table } from '../../../../ui/table.tsx';

interface LabelsPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ after?: string }>;
}

export const generateMetadata = titled(({ labels }) => labels.title);

export default async function LabelsPage({ params, searchParams }: LabelsPageProps) {
  const [{ programme }, { after }] = await Promise.all([params, searchParams]);
  const query = new URLSearchParams({ limit: '20', ...(after ? { after } : {}) });
  const [{ items: rolls, after: next }, places, stands, { zone }, { labels: said }] = await Promise.all([
    readPart(`${apiOf(programme, 'label-rolls')}?${query}`, z.array(LabelRollInList)), placesOf(programme), standsOf(programme), workplaceOf(programme), getMessages(),
  ]);
  const where = placeChoices(places);
  return (
    <>
      <PageHeading lead={said.lead} act={<ButtonLink look="quiet" href={pageOf(programme, 'labels', 'printer')}>{said.printer}</ButtonLink>}>{said.title}</PageHeading>
      {where.length > 0 && <ChooseLabels programme={programme} of="batches" name="placeId" choices={where} />}
      {stands.length > 0 && <ChooseLabels programme={programme} of="donorTrees" name="standId" choices={choicesOf(stands)} />}
      {where.length > 0 && <ChooseLabels programme={programme} of="places" name="placeId" choices={where} />}
      <Section heading={said.rolls} lead={said.rollsLead}>
        {rolls.length === 0 ? <p className="text-ink-soft">{said.noRolls}</p> : (
          <Table
            caption={said.rolls}
            isCaptionHidden
            isStacked
            rows={rolls}
            keyOf={({ id }) => id}
            columns={[
              { head: said.rollColumns.name, cell: ({ id, name }) => <RowLink href={pageOf(programme, 'labels', 'rolls', id)}>{name}</RowLink> },
              { head: said.rollColumns.made, cell: ({ madeAt }) => sayMoment(madeAt, zone) },
              { head: said.rollColumns.codes, isNumber: true, cell: ({ codes }) => codes },
              { head: said.rollColumns.unclaimed, isNumber: true, cell: ({ unclaimed }) => unclaimed },
            ]}
          />
        )}
        {next && <p className="mt-4"><ButtonLink look="quiet" href={`?after=${encodeURIComponent(next)}`}>{said.more}</ButtonLink></p>}
      </Section>
      <Section heading={said.newRoll} isOffPaper>
        <ActionForm action={makeRoll.bind(null, programme)} labels={said.fields} send={said.draw}>
          <input type="hidden" name="id" value={newId()} />
          <TextField name="name" hint={said.newRollHints.name} />
          <TextField name="n" keypad="numeric" hint={said.newRollHints.n} />
        </ActionForm>
      </Section>
    </>
  );
}
