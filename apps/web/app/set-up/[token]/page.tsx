import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { AccountFields } from '../../../features/account/account-fields.tsx';
import { setUp } from '../../../features/account/set-up.action.ts';
import { readIfAllowed } from '../../../lib/read-if-allowed.ts';
import { titled } from '../../../lib/titled.ts';
import { ButtonLink } from '../../../ui/button-link.tsx';
import { DoorPage } from '../../../ui/door-page.tsx';
import { ActionForm } from '../../../ui/form/action-form.tsx';
import { TextField } from '../../../ui/form/text-field.tsx';
import { ZoneField } from '../../../ui/form/zone-field.tsx';
import { underPrefix } from '../../../ui/form/under-prefix.ts';

export const generateMetadata = titled(({ account }) => account.setUp.title);

export default async function SetUpPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const [link, { account: said, programmes }] = await Promise.all([readIfAllowed(`/api/v1/setup/${encodeURIComponent(token)}`, z.undefined()), getMessages()]);
  if (!link) return <DoorPage heading={said.setUp.closed} lead={said.setUp.closedTodo}><ButtonLink href="/sign-in">{said.signIn.title}</ButtonLink></DoorPage>;
  return (
    <DoorPage heading={said.setUp.title} lead={said.setUp.lead}>
      <ActionForm
        action={setUp.bind(null, token)}
        labels={{ ...underPrefix('account/', said.fields), ...underPrefix('programme/', programmes.fields) }}
        send={said.setUp.send}
      >
        <h2 className="text-lg">{said.setUp.you}</h2>
        <AccountFields prefix="account/" />
        <h2 className="mt-4 text-lg">{said.setUp.programme}</h2>
        <TextField name="programme/name" hint={programmes.hints.name} />
        <TextField name="programme/handle" hint={programmes.hints.handle} />
        <ZoneField name="programme/zone" hint={programmes.hints.zone} />
      </ActionForm>
    </DoorPage>
  );
}
