/** Screens of a programme that need no more than its address. `[id]` and the like stand for one thing, found by a link. */
export const OF_PROGRAMME: readonly string[] = [
  '', '/due', '/news', '/places', '/places/new', '/places/walk', '/batches', '/review', '/donor-trees', '/donor-trees/new', '/stands', '/stands/new', '/trips', '/trips/new',
  '/permissions', '/permissions/new', '/taxa', '/taxa/new', '/recipes', '/recipes/new', '/sites', '/sites/new', '/readings', '/readings/funnels', '/readings/compare',
  '/readings/compare?season=2025', '/readings/sites', '/readings/donors-at-risk', '/readings/leave-or-call', '/trace', '/reports', '/reports/landowner', '/reports/funder',
  '/reports/handover', '/people', '/people/invite', '/people/phones', '/partners', '/partners/new', '/keys', '/keys/new', '/import', '/settings', '/stick', '/stick/opening', '/more',
  '/work-lists', '/work-lists/new', '/labels', '/labels/printer', '/labels/print', '/requests', '/requests/new', '/plans', '/plans/new', '/workdays', '/workdays/new', '/treatments',
  '/treatments/new', '/scan', '/scan/many', '/without-label', '/bench', '/bench/potting?stage=cutting', '/bench/moving', '/bench/mixing', '/bench/planting', '/holds',
];

/** What works without a signal; one page, whose screens stand behind the #. */
export const IN_FIELD: readonly string[] = ['/field', '/field#/harrowdale/pack', '/field#/harrowdale/trip', '/field#/harrowdale/stick', '/field#/harrowdale/scan', '/field#/harrowdale/claim/K58Y9J69', '/field#/outbox'];

/** Screens of a person, whatever the programme. */
export const OF_PERSON: readonly string[] = ['/programmes', '/programmes/new', '/account', '/l', '/problems/label/mistyped'];

/** Screens about one thing: the page that links to it, then its route, then what lies behind it. */
export const ABOUT_ONE: ReadonlyArray<readonly [from: string, route: string, behind?: readonly string[]]> = [
  ['/batches', '/batches/[id]', ['/relabel']],
  ['/batches/[id]', '/batches/[id]/[act]'],
  ['/batches/[id]', '/batches/[id]/entries/[entryId]/mend'],
  ['/batches/[id]/entries/[entryId]/mend', '/batches/[id]/entries/[entryId]/withdraw'],
  ['/batches/[id]', '/stickings/[id]'],
  ['/batches/[id]', '/trace'],
  ['/trace', '/trace/hold'],
  ['/bench', '/bench/[job]'],
  ['/donor-trees', '/donor-trees/[id]', ['/clone', '/edit', '/exact-place', '/sighting']],
  ['/stands', '/stands/[id]', ['/edit', '/exact-place']],
  ['/trips', '/trips/[id]', ['/cards', '/edit', '/note']],
  ['/permissions', '/permissions/[id]', ['/edit']],
  ['/taxa', '/taxa/[id]', ['/edit']],
  ['/requests', '/requests/[id]', ['/edit', '/pick', '/set-aside', '/despatch']],
  ['/plans', '/plans/[id]', ['/edit', '/targets/new']],
  ['/plans/[id]', '/plans/[id]/targets/[targetId]'],
  ['/workdays', '/workdays/[id]', ['/edit']],
  ['/recipes', '/recipes/[id]', ['/versions/new']],
  ['/sites', '/sites/[id]', ['/edit']],
  ['/readings', '/readings/stands/[standId]'],
  ['/readings', '/readings/species/[taxonId]'],
  ['/readings', '/readings/seasons/[year]'],
  ['/readings/sites', '/readings/sites/[siteId]'],
  ['/places', '/places/[id]', ['/edit', '/check', '/fill', '/move', '/walk', '/climate', '/climate/new', '/incidents/new', '/regimes/new']],
  ['/work-lists', '/work-lists/[id]', ['/type']],
  ['/labels', '/labels/rolls/[id]'],
  ['/labels/rolls/[id]', '/scan/claim'],
  ['/partners', '/partners/[id]', ['/edit']],
  ['/people', '/people/[id]'],
  ['/due', '/due/put-off'],
];
