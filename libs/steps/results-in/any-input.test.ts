import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { unzip } from '#test/support/unzip';
import { partsOf, sheetOf, zipOf, type Put } from '#test/support/workbook';
import { allProtocols } from '#libs/science/protocols/catalogue';
import { checkReading } from '#libs/science/protocols/check-reading';
import type { JointReading } from '#libs/science/protocols/types';
import { inPlainEnglish, type Tellable } from '#libs/words/said-error';
import { readBundle } from './read-bundle.js';
import { readMessage } from './read-message.js';
import { readResultsFile } from './read-results-file.js';
import { isStated, type Read } from './stated.js';

const docs = (name: string) => readFileSync(path.resolve(import.meta.dirname, '../../../docs/results-in', name));
const BOUND = { interruptAfterTimeLimit: 1_200, numRuns: 20_000, markInterruptAsFailure: false } as const;

const inEnglish = (told: Tellable[]) => told.map(inPlainEnglish).join(' ');

/** Whatever comes in: every reading is either told in a sentence, or one that the studies' rows can judge. */
function judged(all: Read[]): void {
  expect(all.length).toBeGreaterThan(0);
  for (const read of all) {
    for (const { what, words } of read.said) expect(what + words).not.toMatch(/\0|\p{Surrogate}/u);
    if (!isStated(read)) expect(inEnglish(read.told)).toMatch(/[.:!}]$/);
    else for (const protocol of allProtocols()) {
      const { joints, problems } = read.joints(protocol);
      for (const one of [...problems, ...checkReading(protocol, joints as JointReading[]).map((p) => p.told)]) expect(inPlainEnglish(one)).toMatch(/\.$/);
      for (const { value } of joints) if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
    }
  }
}

/** A text with a few of its bytes changed, left out or said twice. */
const spoilt = (text: Buffer) => fc.array(fc.record({ at: fc.nat(text.length - 1), drop: fc.nat(6), put: fc.oneof(fc.uint8Array({ maxLength: 4 }), fc.constantFrom(...[';', ',', '"', '\t', '\n', '0,5', '-1', 'left', '}', '[', 'null', '1e999'].map((s) => Buffer.from(s)))) }), { maxLength: 6 })
  .map((edits) => edits.reduce((all, { at, drop, put }) => Buffer.concat([all.subarray(0, at), Buffer.from(put), all.subarray(at + drop)]), text));
const parsed = (bytes: Buffer): unknown => {
  try { return JSON.parse(bytes.toString('utf8')); } catch { return bytes.toString('utf8'); }
};

/** The example with one value anywhere in it replaced by anything. */
function anyOf(value: unknown, thing: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  if (typeof value !== 'object' || value === null) return fc.oneof({ weight: 8, arbitrary: fc.constant(value) }, { weight: 1, arbitrary: thing });
  if (Array.isArray(value)) return fc.tuple(...value.map((v) => anyOf(v, thing)));
  return fc.record(Object.fromEntries(Object.entries(value).map(([k, v]) => [k, anyOf(v, thing)])), { requiredKeys: Object.keys(value).filter((k) => k === 'resourceType') });
}
const thing = fc.oneof(fc.jsonValue({ maxDepth: 2 }), fc.string({ unit: 'binary' }), fc.constantFrom('left', 'right', 'final', 0.5, 1e300, '\0', '\ud800', '__proto__'));

describe('whatever comes in is read or told in a sentence', () => {
  it('bytes as a file', async () => { await fc.assert(fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => judged((await readResultsFile(bytes)).rows)), BOUND); });
  it.each(['readings.csv', 'readings.xlsx'])('a file that was spoilt: %s', async (name) => { await fc.assert(fc.asyncProperty(spoilt(docs(name)), async (bytes) => judged((await readResultsFile(bytes)).rows)), BOUND); });
  it('a workbook of which one part was spoilt', async () => {
    const parts = Object.fromEntries([...(await unzip(docs('readings.xlsx')))].map(([name, content]) => [name, content.toString()]));
    const one = fc.constantFrom(...Object.keys(parts)).chain((name) => spoilt(Buffer.from(parts[name]!)).map((text) => ({ ...parts, [name]: text.toString('latin1') })));
    await fc.assert(fc.asyncProperty(one, async (spoiltParts) => judged((await readResultsFile(await zipOf(spoiltParts, { compress: false }))).rows)), BOUND);
  });
  it('a workbook with anything in its cells', async () => {
    const put: fc.Arbitrary<Put> = fc.oneof(fc.constant(null), fc.string({ unit: 'grapheme' }), fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.record({ number: fc.oneof(fc.integer(), fc.double({ noNaN: true, noDefaultInfinity: true })), shown: fc.constantFrom('general', 'day', 'moment', 'fifteen', 'red') }),
      fc.record({ xml: fc.tuple(fc.constantFrom('s', 'b', 'e', 'd', 'n', 'str', 'inlineStr', 'x'), fc.constantFrom('', '0', '1', '-1', '1e308', '#N/A', '2026-11-30T00:00:00', '_x0000__xD800_')).map(([type, value]) => `<c r="ADDRESS" t="${type}"><v>${value}</v></c>`) }));
    const heads: Put[] = ['package', 'order', 'number', 'read by', 'read on', 'dog number', 'comment', 'left', 'left reason', 'left osteophytes', 'right'];
    const rows = fc.array(fc.array(put, { maxLength: 13 }), { minLength: 1, maxLength: 4 });
    await fc.assert(fc.asyncProperty(rows, async (cells) => judged((await readResultsFile(await zipOf(partsOf({ Readings: sheetOf([heads, ...cells.map((row): Put[] => ['P-1', ...row.slice(1)])]) }), { compress: false }))).rows)), BOUND);
  });
  it('any JSON as a message or a Bundle', () => { fc.assert(fc.property(fc.jsonValue(), (body) => { judged(readMessage(body)); judged(readBundle(body)); }), BOUND); });
  it('a message that was spoilt', () => { fc.assert(fc.property(fc.oneof(anyOf(parsed(docs('message.json')), thing), spoilt(docs('message.json')).map(parsed)), (body) => judged(readMessage(body))), BOUND); });
  it('a Bundle that was spoilt', () => { fc.assert(fc.property(fc.oneof(anyOf(parsed(docs('bundle.json')), thing), spoilt(docs('bundle.json')).map(parsed)), (body) => judged(readBundle(body))), BOUND); });
});
