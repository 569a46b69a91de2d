import { useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';

const STEPS = ['taxa', 'stands', 'places', 'recipes', 'trips'] as const;

/** For a programme without anything in it: what to write down first. */
export function Beginning({ programme }: { programme: string }) {
  const said = useMessages().home;
  return (
    <Section heading={said.begin} lead={said.beginLead}>
      <ol className="grid list-decimal gap-1 pl-6">
        {STEPS.map((step) => (
          <li key={step}>
            <RowLink href={pageOf(programme, step)}>{said.steps[step]}</RowLink>
          </li>
        ))}
      </ol>
    </Section>
  );
}
