export const NUMBER_REFUSALS = {
  'survival/no-plants': { status: 422, title: 'No plants to take a share of' },
  'survival/not-a-count': { status: 422, title: 'Those are not counts' },
} as const;
