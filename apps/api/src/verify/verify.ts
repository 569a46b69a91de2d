import { brokenChecks, brokenReferences, guardsThatAreOff } from './database-rules.ts';
import { unfiledEntries } from './filing.ts';
import type { Finding } from './finding.ts';
import { LOOK_ONLY, withConnection } from './keeper.ts';
import { circles, wrongParents, wrongStickings } from './lineage.ts';
import { differingBooks } from './projections.ts';
import { batchesThatDoNotAddUp, programmeThatDoesNotAddUp, stickingsThatDoNotAddUp } from './sums.ts';

/** What is asked of each programme, in this order. */
const QUESTIONS = [
  circles, wrongParents, wrongStickings, unfiledEntries, batchesThatDoNotAddUp, stickingsThatDoNotAddUp, programmeThatDoesNotAddUp, differingBooks,
] as const;

/**
 * Looks for everything in the database that must not be: rows that point to nothing or
 * into another programme, broken lines of descent, entries that are gone, books that
 * differ from a full replay of their entries. Changes nothing.
 *
 * @param urls `keeper` is the login that sees past the policies
 * @returns each finding a sentence that names the row; none when all is well
 */
export async function verify(urls: { readonly keeper: string }): Promise<Finding[]> {
  return withConnection(urls.keeper, LOOK_ONLY, async (sql) => {
    const findings: Finding[] = [...(await guardsThatAreOff(sql)), ...(await brokenReferences(sql)), ...(await brokenChecks(sql))];
    const programmes = await sql.rows<{ id: string }>('SELECT id FROM programme ORDER BY handle');
    for (const { id } of programmes) for (const ask of QUESTIONS) findings.push(...(await ask(sql, id)));
    return findings;
  });
}
