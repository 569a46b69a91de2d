import { Key } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { KeyList } from '../../../../features/key/key-list.tsx';
import { pageOf } from '../../../../lib/page-address.ts';
import { read } from '../../../../lib/read.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

export const generateMetadata = titled(({ keys }) => keys.title);

export default async function KeysPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [keys, { zone }, { keys: said }] = await Promise.all([read(apiOf(programme, 'keys'), z.array(Key)), workplaceOf(programme), getMessages()]);
  return (
    <>
      <PageHeading lead={said.lead} act={<><ButtonLink href={pageOf(programme, 'keys', 'new')}>{said.add}</ButtonLink><ButtonLink look="quiet" href="/api/v1/docs">{said.docs}</ButtonLink></>}>{said.title}</PageHeading>
      {keys.length === 0 ? <Empty>{said.empty}</Empty> : <KeyList programme={programme} keys={keys} zone={zone} />}
    </>
  );
}
