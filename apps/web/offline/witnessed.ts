import type { ActionName } from '#libs/contracts/actions/all';

/** What has happened whoever hears of it when. All else is decided on the order as it is, and needs the network. */
export const witnessedActions = ['recordReading', 'recordDrug', 'recordEvent', 'stopImaging', 'endImaging', 'signRecovery', 'giveSheet', 'sendHome', 'scanDog'] as const satisfies ActionName[];
export type Witnessed = (typeof witnessedActions)[number];
export const isWitnessed = (action: ActionName): action is Witnessed => (witnessedActions as readonly ActionName[]).includes(action);

/** An act that waits on this tablet until the network is back. */
export type Waiting = {
  /** Given by the store; they are sent in this order. */
  seq?: number;
  key: string;
  order: string;
  action: Witnessed;
  on: string;
  /** When it happened, by the server's clock. */
  at: string;
  input: Record<string, unknown>;
  /** Whose entry it is; nobody else's session sends it. */
  by: string;
  byName: string;
  /** Why the server did not take it. */
  refused?: string;
};
