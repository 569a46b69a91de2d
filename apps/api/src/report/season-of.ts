/** Year in which the season of a day began. @param startsIn month, January is 1 */
export function seasonOf(day: string, startsIn: number): number {
  const [year, month] = day.split('-').map(Number);
  return Number(month) >= startsIn ? Number(year) : Number(year) - 1;
}

/** `2024/25`; where seasons begin in January, `2024`. */
export const seasonName = (year: number, startsIn: number): string => (startsIn === 1 ? String(year) : `${year}/${String((year + 1) % 100).padStart(2, '0')}`);
