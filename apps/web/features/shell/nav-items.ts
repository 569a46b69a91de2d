import type { Role } from '@sprigline/contract';

export type NavName =
  | 'home' | 'places' | 'batches' | 'donorTrees' | 'stands' | 'trips' | 'permissions' | 'taxa' | 'recipes'
  | 'bench' | 'field' | 'holds' | 'sites' | 'workLists' | 'labels' | 'readings' | 'review' | 'import' | 'people' | 'partners' | 'keys'
  | 'settings' | 'due' | 'requests' | 'workdays' | 'compare' | 'trace' | 'reports' | 'treatments' | 'plans' | 'scan';

export type NavGroupName = 'work' | 'paper' | 'knowing' | 'sources' | 'programme';

interface NavItem {
  readonly name: NavName;
  /** Parts of the address below the programme. */
  readonly path: readonly string[];
  readonly isForDesk?: boolean;
}

export interface NavGroup {
  readonly name: NavGroupName;
  readonly items: readonly NavItem[];
}

const GROUPS: readonly NavGroup[] = [
  {
    name: 'work',
    items: [
      { name: 'home', path: [] },
      { name: 'due', path: ['due'] },
      { name: 'scan', path: ['scan'] },
      { name: 'places', path: ['places'] },
      { name: 'batches', path: ['batches'] },
      { name: 'field', path: ['field'] },
      { name: 'bench', path: ['bench'] },
      { name: 'review', path: ['review'], isForDesk: true },
      { name: 'holds', path: ['holds'] },
    ],
  },
  {
    name: 'paper',
    items: [
      { name: 'workLists', path: ['work-lists'] },
      { name: 'labels', path: ['labels'] },
      { name: 'workdays', path: ['workdays'] },
      { name: 'requests', path: ['requests'] },
      { name: 'reports', path: ['reports'] },
      { name: 'treatments', path: ['treatments'] },
    ],
  },
  {
    name: 'knowing',
    items: [
      { name: 'readings', path: ['readings'] },
      { name: 'compare', path: ['readings', 'compare'] },
      { name: 'plans', path: ['plans'] },
      { name: 'trace', path: ['trace'] },
    ],
  },
  {
    name: 'sources',
    items: [
      { name: 'donorTrees', path: ['donor-trees'] },
      { name: 'stands', path: ['stands'] },
      { name: 'trips', path: ['trips'] },
      { name: 'permissions', path: ['permissions'], isForDesk: true },
    ],
  },
  {
    name: 'programme',
    items: [
      { name: 'sites', path: ['sites'] },
      { name: 'taxa', path: ['taxa'] },
      { name: 'recipes', path: ['recipes'] },
      { name: 'people', path: ['people'] },
      { name: 'partners', path: ['partners'], isForDesk: true },
      { name: 'keys', path: ['keys'], isForDesk: true },
      { name: 'import', path: ['import'], isForDesk: true },
      { name: 'settings', path: ['settings'], isForDesk: true },
    ],
  },
];

/** What is theirs, and no way to anything else. */
const FOR_PARTNERS: readonly NavGroup[] = [
  {
    name: 'work',
    items: [
      { name: 'home', path: [] },
      { name: 'scan', path: ['scan'] },
      { name: 'sites', path: ['sites'] },
      { name: 'batches', path: ['batches'] },
      { name: 'stands', path: ['stands'] },
      { name: 'donorTrees', path: ['donor-trees'] },
      { name: 'readings', path: ['readings', 'funnels'] },
    ],
  },
];

/** What a role finds in the navigation. The API has the last word on every page. */
export function navFor(role: Role): readonly NavGroup[] {
  if (role === 'partner') return FOR_PARTNERS;
  const isDesk = role !== 'volunteer';
  return GROUPS.map((group) => ({ ...group, items: group.items.filter((item) => isDesk || !item.isForDesk) })).filter(({ items }) => items.length > 0);
}

/** The few that stand at the foot of a phone. */
export const atHandFor = (role: Role): readonly NavName[] => (role === 'partner' ? ['home', 'scan', 'sites', 'batches'] : ['home', 'scan', 'places', 'batches']);
