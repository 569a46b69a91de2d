/**
 * The rising sequence nearest to some values by weighted squares (isotonic regression): neighbours in the wrong order are pooled.
 *
 * @param weights above 0, as many as values
 *
 * Source: pool-adjacent-violators, Ayer M et al. (1955) Ann. Math. Stat. 26:641-647; from memory.
 */
export function pooledSteps(values: readonly number[], weights: readonly number[]): number[] {
  const pools: { value: number; weight: number; length: number }[] = [];
  for (const [at, value] of values.entries()) {
    let pool = { value, weight: weights[at]!, length: 1 };
    for (let before = pools.at(-1); before && before.value >= pool.value; before = pools.at(-1)) {
      const weight = before.weight + pool.weight;
      pool = { value: (before.value * before.weight + pool.value * pool.weight) / weight, weight, length: before.length + pool.length };
      pools.pop();
    }
    pools.push(pool);
  }
  return pools.flatMap(({ value, length }) => Array.from({ length }, () => value));
}
