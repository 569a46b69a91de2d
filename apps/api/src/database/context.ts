/** For whom a transaction runs. The policies of the database read exactly this. */
export interface Context {
  readonly programmeId: string;
  readonly personId?: string | undefined;
  readonly partnerId?: string | undefined;
  readonly seesExact: boolean;
}

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/**
 * One statement that begins a transaction and says for whom.
 *
 * Sent as text, since a statement of several parts cannot take parameters:
 * hence every id is checked to be nothing but a UUID.
 */
export function beginFor(context: Context): string {
  const settings = [
    ['app.programme_id', uuid(context.programmeId)],
    ['app.person_id', uuid(context.personId)],
    ['app.partner_id', uuid(context.partnerId)],
    ['app.sees_exact', context.seesExact ? 'yes' : ''],
  ];
  return `BEGIN; SELECT ${settings.map(([name, value]) => `set_config('${name}', '${value}', true)`).join(', ')}`;
}

function uuid(id: string | undefined): string {
  if (id === undefined) return '';
  if (!UUID.test(id)) throw new Error('not a UUID in the context of a transaction');
  return id;
}
