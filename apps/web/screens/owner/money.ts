/** An amount as a person types it, in minor units; undefined when it cannot be read as money. */
export function readMoney(written: string): number | undefined {
  const plain = written.trim().replace(/[\s\u00a0\u202f]/g, '');
  if (!/^\d{1,9}([.,]\d{1,2})?$/.test(plain)) return undefined;
  const [whole = '0', part = ''] = plain.split(/[.,]/);
  return Number(whole + part.padEnd(2, '0'));
}
