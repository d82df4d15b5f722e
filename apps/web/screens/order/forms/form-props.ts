import type { NextAction, OrderScreen } from '#libs/contracts/screens/order';

/** What every form of an action gets from the order page. */
export type FormProps = {
  screen: OrderScreen;
  next: NextAction;
  /** What is filled in already when the form opens. */
  start?: Record<string, unknown> | undefined;
  submit: (input: unknown) => void;
  failure: unknown;
  busy: boolean;
};

export const visitOf = ({ screen, next }: FormProps) => screen.visits.find((v) => v.id === next.on.id);
export const studyOf = ({ screen, next }: FormProps) => screen.studies.find((s) => s.id === next.on.id);
export const choicesFor = (screen: OrderScreen, pick: string) => screen.choices[pick] ?? [];
