import type { CompareBy, ComparedGroup } from '@sprigline/contract';
import type { Messages } from 'next-intl';

/** What a group is called, made of what is told and of words. */
export function groupName({ key, name, hormone }: Pick<ComparedGroup, 'key' | 'name' | 'hormone'>, by: CompareBy, { comparison: said, readings, recipes }: Pick<Messages, 'comparison' | 'readings' | 'recipes'>): string {
  if (key === '') return said.notKnown[by];
  if (hormone) return [name, hormone.form && recipes.hormoneForm[hormone.form]].filter(Boolean).join(', ');
  if ((by === 'hormone' || by === 'wound') && key === 'none') return said.none[by];
  if (by === 'ageClass') return readings.ageClass[key as keyof Messages['readings']['ageClass']] ?? name;
  return name === '' ? key : name;
}
