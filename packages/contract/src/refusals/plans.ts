export const PLAN_REFUSALS = {
  'plan/no-trees': { status: 409, title: 'No donor tree there can be cut' },
  'plan/no-such-recipe': { status: 422, title: 'There is no such recipe' },
  'plan/needs-two-recipes': { status: 422, title: 'A comparison needs two recipes' },
} as const;
