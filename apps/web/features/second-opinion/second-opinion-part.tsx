import type { SecondOpinion } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Flag } from '../../ui/flag.tsx';
import { Section } from '../../ui/section.tsx';
import { StickingOpinion } from './sticking-opinion.tsx';

interface SecondOpinionPartProps {
  readonly opinion: SecondOpinion;
  /** Folded in, with how many things are unusual: on pages that are about something else. */
  readonly isFolded?: boolean;
}

/** The second opinion on what was stuck. It warns and never blocks. */
export function SecondOpinionPart({ opinion: { groups }, isFolded = false }: SecondOpinionPartProps) {
  const { secondOpinion: said } = useMessages();
  const t = useTranslations('secondOpinion');
  if (groups.length === 0) return null;
  const unusual = groups.reduce((sum, { opinions }) => sum + opinions.filter(({ verdict }) => verdict === 'unusual').length, 0);
  const all = groups.map((group) => <StickingOpinion key={`${group.stand?.id ?? ''} ${group.taxon.id} ${group.stuckOn}`} told={group} />);
  if (!isFolded) return <Section heading={said.title} lead={said.lead}>{all}</Section>;
  return (
    <Section heading={said.title} lead={said.lead}>
      <details>
        <summary className="mb-3 inline-flex min-h-11 cursor-pointer items-center underline"><Flag tone={unusual > 0 ? 'look' : 'good'}>{t('summary', { unusual })}</Flag></summary>
        {all}
      </details>
    </Section>
  );
}
