import { validity } from './validity.js';

export function Until({ day, today }: { day: string; today: string }) {
  const { words, asks } = validity(day, today);
  return asks ? <b className="asked">{words}</b> : <>{words}</>;
}
