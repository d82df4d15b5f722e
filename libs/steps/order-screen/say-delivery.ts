import type { DeliveryView } from '#libs/contracts/screens/order';
import { t } from '#libs/words/spoken';
import { sayStored, type Stored } from '#libs/words/stored';
import type { StoredDelivery } from './screen-source.js';

const sayIf = (told: Stored): string | null => (told.words === null ? null : sayStored(told, t));

/** How far the films of a sending are, to whoever looks. */
export function sayDelivery(delivery: StoredDelivery | undefined): DeliveryView | null {
  if (!delivery) return null;
  const { words, sentences, films, notes, ...rest } = delivery;
  return {
    ...rest,
    words: sayIf({ words, sentences }),
    films: films.map(({ name, named, state, ...told }) => ({ name: named ? t.said(named) : t.known(name), state, words: sayIf(told) })),
    notes: notes.map(({ said, ...note }) => ({ ...note, says: sayIf(said) })),
  };
}
