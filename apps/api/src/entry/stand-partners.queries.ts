/**
 * Partners on whose land the donor trees of each batch stand: of its sticking, or of
 * what a mixed batch was made of, however often it was mixed and split.
 */
export const STAND_PARTNERS = `SELECT batch_id, partner_id, 'stand' AS relation FROM stand_partners_of($1)`;
