export const SEAL_REFUSALS = {
  'seal/cannot-be-opened': { status: 422, title: 'That sealed place cannot be opened' },
  'seal/holds-no-place': { status: 422, title: 'What was sealed is no place' },
  'seal/place-told': { status: 409, title: 'A place of this tree is told already' },
} as const;
