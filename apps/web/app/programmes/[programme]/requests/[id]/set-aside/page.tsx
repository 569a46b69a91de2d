import { PlantRequest, RequestPlants, type Supply } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { setPlantsAside } from '../../../../../../features/request/change-request.action.ts';
import { SupplyFields, supplyLabels } from '../../../../../../features/request/supply-fields.tsx';
import { whoAsks } from '../../../../../../features/request/who-asks.ts';
import { partnersOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read, readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { Empty } from '../../../../../../ui/empty.tsx';
import { ActionForm } from '../../../../../../ui/form/action-form.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ requests }) => requests.setAside);

export default async function SetAsidePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: request, etag }, { supplies, pick }, partners, { requests: said }, t] = await Promise.all([
    readVersion(apiOf(programme, 'requests', id), PlantRequest), read(apiOf(programme, 'requests', id, 'plants'), RequestPlants), partnersOf(programme), getMessages(), getTranslations('requests'),
  ]);
  const name = whoAsks(request, partners);
  const startOf = ({ reserved, proposed }: Supply): number => (request.setAside.length > 0 ? reserved : proposed);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'requests'), words: said.title }, { href: pageOf(programme, 'requests', id), words: name }]} />
      <PageHeading lead={said.setAsideLead}>{t('setAsideTitle', { name })}</PageHeading>
      <div className="mb-6 grid max-w-prose gap-2">
        <p className="font-semibold">{t('pickSays', { n: pick.plants, donors: pick.donors, stops: pick.stops })}</p>
        {pick.short > 0 && <p>{t('pickShort', { n: pick.short })}</p>}
        {!pick.isShortestProven && <p className="text-ink-soft">{said.pickLong}</p>}
        <p className="text-sm text-ink-soft">{said.mixedLeftOut}</p>
      </div>
      {supplies.length === 0 ? (
        <Empty>{said.nothingFits}</Empty>
      ) : (
        <ActionForm action={setPlantsAside.bind(null, programme, id, etag)} labels={supplyLabels(supplies, (label) => t('lineField', { label }), said.untold)} send={said.setAsideSend}>
          <SupplyFields supplies={supplies} startOf={startOf} saysOf={({ free, balance }) => t('lineFree', { free, there: balance })} />
        </ActionForm>
      )}
    </>
  );
}
