import type { Socket } from 'node:net';

const HEADER = 6;
const DATA = 4;
const MOST_OTHER = 65_536;

/**
 * Follows the lengths that the other side claims and hangs up at the first impossible one, before anything is kept of it: the
 * library believes every length and gathers until it is reached.
 */
export function guardPdus(socket: Socket, longestData: number): void {
  let header = Buffer.alloc(0);
  let left = 0;
  socket.on('data', (chunk: Buffer) => {
    for (let at = 0; at < chunk.length; ) {
      if (left > 0) {
        const passed = Math.min(left, chunk.length - at);
        left -= passed;
        at += passed;
        continue;
      }
      const part = chunk.subarray(at, at + HEADER - header.length);
      header = Buffer.concat([header, part]);
      at += part.length;
      if (header.length < HEADER) return;
      const [type, length] = [header[0]!, header.readUInt32BE(2)];
      header = Buffer.alloc(0);
      if (type < 1 || type > 7 || length > (type === DATA ? longestData : MOST_OTHER)) {
        socket.destroy(new Error(`a message of type ${type} and ${length} bytes is none`));
        return;
      }
      left = length;
    }
  });
}
