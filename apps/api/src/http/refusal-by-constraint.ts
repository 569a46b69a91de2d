/** Constraints that say no on our behalf. Any other violated constraint is a defect and answers 500. */
export const REFUSAL_BY_CONSTRAINT: Readonly<Record<string, string>> = {
  label_code_is_never_used_again: 'batch/label-taken',
  donor_tree_label_is_used_once: 'record/name-taken',
  stand_name_is_used_once: 'record/name-taken',
  taxon_name_is_used_once: 'record/name-taken',
  partner_name_is_used_once: 'record/name-taken',
  recipe_name_is_used_once: 'record/name-taken',
  place_name_is_used_once_where_it_lies: 'record/name-taken',
};
