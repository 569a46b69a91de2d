import { fisherExact, logisticRegression, mantelHaenszel } from '@sprigline/domain';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type R, startR } from './r.ts';
import { WITNESSES } from './witnesses.ts';

/** A year and a page: Hoblyn & Palmer 1934, Bartlett p. 248. A failure comes back by it. */
const SEED = 19340248;

let r: R;
beforeAll(async () => {
  r = await startR();
}, 60_000);
afterAll(() => r.stop());

describe('R agrees on twenty random inputs', () => {
  test.each(WITNESSES)('with $what', async ({ agrees }) => agrees(r, 20, SEED));
});

describe('R and we read published data alike', () => {
  // UC Berkeley admissions 1973, Bickel PJ et al. (1975) Science 187:398-404; from R's own data set, department by department.
  test('Berkeley admissions', async () => {
    const cells = await r.numbers('as.numeric(UCBAdmissions)');
    const strata = Array.from({ length: 6 }, (_, at) => cells.slice(4 * at, 4 * at + 4)).map(([men = 0, menOut = 0, women = 0, womenOut = 0]) => ({ first: { yes: men, no: menOut }, second: { yes: women, no: womenOut } }));
    const { chiSquare, chance, oddsRatio, lower, upper } = mantelHaenszel(strata);
    const theirs = await r.numbers('local({ one <- mantelhaen.test(UCBAdmissions); c(one$statistic, one$p.value, one$estimate, one$conf.int) })');
    [chiSquare, chance, oddsRatio, lower!, upper!].forEach((value, at) => expect(value).toBeCloseTo(theirs[at]!, 9));
  });

  // Fisher RA (1935) The Design of Experiments: eight cups of tea.
  test('Fisher’s tea', async () => {
    const { chance } = fisherExact({ first: { yes: 3, no: 1 }, second: { yes: 1, no: 3 } });
    expect([chance]).toEqual([expect.closeTo((await r.numbers('fisher.test(matrix(c(3, 1, 1, 3), 2))$p.value'))[0]!, 12)]);
  });

  // Hoblyn TN, Palmer RC (1934), as printed in Bartlett MS (1935) J. R. Stat. Soc. Suppl. 2:248-252: plum root cuttings alive of 240; counts from memory.
  test('plum root cuttings by length and time of planting: strata, additive model, interaction', async () => {
    const alive = [156, 84, 107, 31];
    const strata = [[156, 84], [107, 31]].map(([once = 0, spring = 0]) => ({ first: { yes: once, no: 240 - once }, second: { yes: spring, no: 240 - spring } }));
    const trays = alive.flatMap((n, at) => [Math.floor(n / 2), Math.ceil(n / 2)].map((successes, tray) => ({ terms: [at < 2 ? 1 : 0, at % 2 === 0 ? 1 : 0], successes: successes + (tray === 0 ? 5 : -5), plants: 120, cluster: `${at} ${tray}` })));
    const additive = logisticRegression(trays);
    const full = logisticRegression(trays.map((row) => ({ ...row, terms: [...row.terms, row.terms[0]! * row.terms[1]!] })));
    const theirs = await r.numbers(`local({ s <- c(156, 84, 107, 31); long <- c(1, 1, 0, 0); once <- c(1, 0, 1, 0)
      how <- glm.control(epsilon = 1e-14); a <- glm(cbind(s, 240 - s) ~ long + once, binomial, control = how); b <- update(a, . ~ . + long:once)
      unname(c(mantelhaen.test(array(c(156, 84, 84, 156, 107, 31, 133, 209), c(2, 2, 2)))$statistic, coef(a), sqrt(diag(vcov(a))), coef(b)[4], deviance(a) - deviance(b))) })`);
    const ours = [mantelHaenszel(strata).chiSquare, ...additive.terms.map(({ estimate }) => estimate), ...additive.terms.map(({ plainError }) => plainError), full.terms[3]!.estimate, additive.deviance - full.deviance];
    ours.forEach((value, at) => expect(value).toBeCloseTo(theirs[at]!, 7));
  });
});
