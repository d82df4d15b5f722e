/** Hands out slots of past and coming days, so that no room and nobody is in two places. */
export class Diary {
  readonly #taken = new Map<string, number>();

  next(house: string, day: string, lanes: number): { lane: number; start: string } {
    const key = `${house} ${day}`;
    const taken = this.#taken.get(key) ?? 0;
    this.#taken.set(key, taken + 1);
    const minute = 8 * 60 + 30 + Math.floor(taken / lanes) * 45;
    return { lane: taken % lanes, start: `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}` };
  }
}
