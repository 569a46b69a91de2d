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
export const beginFor = (context: Context, presentTime?: Date): string =>
  `BEGIN; ${settingsFor(context)}${presentTime ? `; SELECT set_config('app.present_time', '${presentTime.toISOString()}', true)` : ''}`;

/** The same for a transaction that has begun. It ends with the transaction. */
export function settingsFor(context: Context): string {
  const settings = [
    ['app.programme_id', uuid(context.programmeId)],
    ['app.person_id', uuid(context.personId)],
    ['app.partner_id', uuid(context.partnerId)],
    ['app.sees_exact', context.seesExact ? 'yes' : ''],
    // Sums over a whole programme are made in memory, not on disk; a connection seldom needs it.
    ['work_mem', '32MB'],
  ];
  return `SELECT ${settings.map(([name, value]) => `set_config('${name}', '${value}', true)`).join(', ')}`;
}

/**
 * The house itself, at work for somebody who may not see exact places: it files
 * what they tell, cuts cells, and adds up quotas. Whatever a unit of work under it
 * reads of exact places, trip notes or permissions must not be answered.
 */
export const asTheHouse = <C extends Context>(context: C): C => ({ ...context, seesExact: true });

function uuid(id: string | undefined): string {
  if (id === undefined) return '';
  if (!UUID.test(id)) throw new Error('not a UUID in the context of a transaction');
  return id;
}
