import { damagedPictures } from '../photo/damage.queries.ts';
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
 * differ from a full replay of their entries, pictures that are missing or are other ones.
 * Changes nothing.
 *
 * @param install `keeper` is the login that sees past the policies; without a folder, pictures are not looked at
 * @returns each finding a sentence that names the row; none when all is well
 */
export async function verify({ keeper, photoFolder }: { readonly keeper: string; readonly photoFolder?: string }): Promise<Finding[]> {
  return withConnection(keeper, LOOK_ONLY, async (sql) => {
    const findings: Finding[] = [...(await guardsThatAreOff(sql)), ...(await brokenReferences(sql)), ...(await brokenChecks(sql))];
    const programmes = await sql.rows<{ id: string }>('SELECT id FROM programme ORDER BY handle');
    for (const { id } of programmes) {
      for (const ask of QUESTIONS) findings.push(...(await ask(sql, id)));
      if (photoFolder !== undefined) findings.push(...(await damagedPictures(sql, id, photoFolder)).map((sentence) => ({ rule: 'picture-is-damaged' as const, programmeId: id, sentence })));
    }
    return findings;
  });
}
