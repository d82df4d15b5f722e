/** How many lines each machine has: one that opens them without end keeps no other out. */
export class LinesOf {
  readonly #open = new Map<string, number>();

  enter(machine: string, most: number): boolean {
    const open = this.#open.get(machine) ?? 0;
    if (open >= most) return false;
    this.#open.set(machine, open + 1);
    return true;
  }

  leave(machine: string): void {
    const left = (this.#open.get(machine) ?? 1) - 1;
    if (left > 0) this.#open.set(machine, left);
    else this.#open.delete(machine);
  }
}
