// Runs one decoder over one code stream, in a thread of its own: it takes up to seconds, and a bad stream may end it.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parentPort, workerData } from 'node:worker_threads';

const require = createRequire(import.meta.url);

function wasm(codec) {
  return require(`@cornerstonejs/codec-${codec}/decodewasmjs`)({ wasmBinary: readFileSync(require.resolve(`@cornerstonejs/codec-${codec}/decodewasm`)), print: () => {}, printErr: () => {} });
}

function byWasm(decoder, stream) {
  decoder.getEncodedBuffer(stream.length).set(stream);
  decoder.decode();
  return Uint8Array.from(decoder.getDecodedBuffer());
}

const decoders = {
  jpegLs: async (stream) => byWasm(new (await wasm('charls')).JpegLSDecoder(), stream),
  jpeg2000: async (stream) => byWasm(new (await wasm('openjpeg')).J2KDecoder(), stream),
  jpegLossless: async (stream) => {
    const { Decoder } = await import('jpeg-lossless-decoder-js');
    const { buffer, byteLength } = new Decoder().decode(stream.buffer, stream.byteOffset, stream.byteLength);
    return new Uint8Array(buffer, 0, byteLength);
  },
};

const pixels = await decoders[workerData.codec](workerData.stream);
parentPort.postMessage(pixels, [pixels.buffer]);
