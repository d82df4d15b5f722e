import fc from 'fast-check';
import { WholeMessages } from './whole-messages.js';

const LONGEST = 200_000;
const message = (type: number, body: Uint8Array) => {
  const header = Buffer.from([type, 0, 0, 0, 0, 0]);
  header.writeUInt32BE(body.length, 2);
  return Buffer.concat([header, body]);
};
const cutAt = (all: Buffer, places: number[]) => {
  const at = [0, ...places.map((p) => p % (all.length + 1)).sort((a, b) => a - b), all.length];
  return at.slice(1).map((end, i) => all.subarray(at[i], end));
};

it('messages come out whole and in order, however the line has cut them', () => {
  const messages = fc.array(fc.tuple(fc.integer({ min: 1, max: 7 }), fc.uint8Array({ maxLength: 40 })), { maxLength: 8 });
  fc.assert(fc.property(messages, fc.array(fc.nat(), { maxLength: 12 }), (sent, places) => {
    const wanted = sent.map(([type, body]) => message(type, body));
    const reader = new WholeMessages(LONGEST);
    const got = cutAt(Buffer.concat(wanted), places).flatMap((chunk) => [...reader.cut(chunk)]);
    expect(got.map((m) => m.toString('hex'))).toEqual(wanted.map((m) => m.toString('hex')));
  }));
});

it('a message inside one chunk is not copied', () => {
  const chunk = Buffer.concat([message(4, Buffer.alloc(10, 1)), message(4, Buffer.alloc(5, 2))]);
  expect([...new WholeMessages(LONGEST).cut(chunk)].map((m) => m.buffer === chunk.buffer)).toEqual([true, true]);
});

it.each([
  ['of no known type', [8, 0, 0, 0, 0, 4]],
  ['of data that is longer than was agreed', [4, 0, 0xff, 0xff, 0xff, 0xff]],
  ['of another kind that is longer than any is', [1, 0, 0, 1, 0, 1]],
])('what stands before a message %s is handed on, then it is refused at its header', (_, header) => {
  const good = message(5, Buffer.alloc(4));
  const reader = new WholeMessages(LONGEST).cut(Buffer.concat([good, Buffer.from(header)]));
  expect(reader.next().value).toEqual(good);
  expect(() => reader.next()).toThrow(/is none$/);
});
