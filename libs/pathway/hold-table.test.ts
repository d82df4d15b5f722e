import { actions } from './actions.js';
import { holdTable } from './hold-table.js';
import { orderHoldCodes, studyHoldCodes, visitHoldCodes } from './hold-codes.js';

describe('the table of holds', () => {
  const rows = Object.entries(holdTable);

  it('never forbids stopping, monitoring, recovery, the going-home sheet or telling of a death', () => {
    const free = ['stopImaging', 'endImaging', 'recordReading', 'recordDrug', 'recordEvent', 'signRecovery', 'giveSheet', 'recordDeath'];
    expect(rows.filter(([, row]) => row.forbids.some((action) => free.includes(action)))).toEqual([]);
  });

  it('gives every hold a way, but the one that time alone ends', () => {
    expect(rows.filter(([, row]) => row.ways.length === 0).map(([code]) => code)).toEqual(['LETTER_WAITS']);
  });

  it('forbids nothing that would be its own only way', () => {
    expect(rows.filter(([, row]) => row.ways.length > 0 && row.ways.every((way) => row.forbids.includes(way)))).toEqual([]);
  });

  it('knows every action that it names', () => {
    const named = rows.flatMap(([, row]) => [...row.ways, ...row.forbids.filter((word) => word !== 'showBuyer')]);
    expect(named.filter((action) => !(action in actions))).toEqual([]);
  });

  it('lists every code once in the order of showing', () => {
    const listed = [...orderHoldCodes, ...visitHoldCodes, ...studyHoldCodes];
    expect(new Set(listed).size).toBe(listed.length);
    expect(rows.map(([code]) => code)).toEqual(listed);
  });
});
