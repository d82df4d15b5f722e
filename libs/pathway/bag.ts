import { isAfter } from './effective.js';
import type { Fact, FactOf, FactType } from './facts.js';

/** The facts about one thing, by type, in the order in which they happened. */
export class Bag {
  private readonly byType = new Map<FactType, Fact[]>();

  add(fact: Fact): void {
    const list = this.byType.get(fact.type);
    if (list) list.push(fact);
    else this.byType.set(fact.type, [fact]);
  }

  all<T extends FactType>(type: T): FactOf<T>[] {
    return (this.byType.get(type) ?? []) as FactOf<T>[];
  }

  first<T extends FactType>(type: T): FactOf<T> | undefined {
    return this.all(type)[0];
  }

  last<T extends FactType>(type: T): FactOf<T> | undefined {
    return this.all(type).at(-1);
  }

  has(type: FactType): boolean {
    return this.byType.has(type);
  }

  /** Facts of a type that happened after another fact; all of them where there is no other. */
  after<T extends FactType>(type: T, other: Fact | undefined): FactOf<T>[] {
    return this.all(type).filter((fact) => isAfter(fact as Fact, other));
  }

  latest<T extends FactType>(type: T, test: (fact: FactOf<T>) => boolean): FactOf<T> | undefined {
    return this.all(type).findLast(test);
  }
}
