import { describe, expect, test } from 'vitest';
import { nearSpellings } from './near-spellings.ts';

describe('nearSpellings', () => {
  test('joins what differs in spaces and capitals only, keeping the spelling used most', () => {
    const groups = nearSpellings(new Map([['Skell Gill', 4], ['Skell Gill  ', 1], [' SKELL GILL', 1], ['Corran Ridge', 9]]));

    expect(groups).toEqual([
      {
        keep: 'Skell Gill',
        sameApartFromCase: true,
        spellings: [{ seen: 'Skell Gill', times: 4 }, { seen: ' SKELL GILL', times: 1 }, { seen: 'Skell Gill  ', times: 1 }],
      },
    ]);
  });

  test('offers words that differ by a letter, for a person to look at', () => {
    const [group] = nearSpellings(new Map([['Thornber Edge', 9], ['Thornbr Edge', 1]]));

    expect(group).toMatchObject({ keep: 'Thornber Edge', sameApartFromCase: false });
  });

  test.each([
    ['other digits are another thing', ['Frame 1', 'Frame 2']],
    ['another single letter is another thing', ['House A / bench 1', 'House B / bench 1']],
    ['short words are too near each other by chance', ['ash', 'oak']],
    ['three letters apart are two words', ['Corran Ridge', 'Corren Rigg']],
  ])('joins nothing: %s', (_, words) => {
    expect(nearSpellings(new Map(words.map((word) => [word, 1])))).toEqual([]);
  });

  test('the order of the sheet changes nothing', () => {
    const words: [string, number][] = [['Lowmire Wood', 3], ['lowmire wood', 1], ['Lowmire Wod', 1]];

    expect(nearSpellings(new Map(words.toReversed()))).toEqual(nearSpellings(new Map(words)));
  });
});
