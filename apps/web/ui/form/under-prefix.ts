/** Labels of fields that stand within a thing of the body: `medium` becomes `version/medium`. */
export function underPrefix(prefix: string, labels: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(labels).map(([name, label]) => [`${prefix}${name}`, label]));
}
