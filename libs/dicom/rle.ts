/** DICOM PS3.5 annex G: up to 15 planes of bytes, the high ones first, each packed by runs. The answer is little-endian, pixel by pixel. */
export function unpackRle(packed: Uint8Array, pixels: number, samples: number, bytesPerSample: number): Uint8Array {
  const header = new DataView(packed.buffer, packed.byteOffset, packed.byteLength);
  const planes = header.getUint32(0, true);
  if (planes !== samples * bytesPerSample) throw new RangeError(`${planes} planes for ${samples * bytesPerSample} bytes of a pixel`);
  const out = new Uint8Array(pixels * planes);
  for (let plane = 0; plane < planes; plane++) {
    const sample = Math.floor(plane / bytesPerSample);
    const byte = bytesPerSample - 1 - (plane % bytesPerSample);
    const end = plane + 1 < planes ? header.getUint32(8 + 4 * plane, true) : packed.length;
    unpackPlane(packed.subarray(header.getUint32(4 + 4 * plane, true), end), out, sample * bytesPerSample + byte, planes, pixels);
  }
  return out;
}

function unpackPlane(packed: Uint8Array, out: Uint8Array, first: number, step: number, pixels: number): void {
  let [at, to] = [0, first];
  const end = first + pixels * step;
  while (to < end) {
    if (at >= packed.length) throw new RangeError('a plane was cut short');
    const control = packed[at++]!;
    if (control === 128) continue;
    const run = control > 128;
    const count = run ? 257 - control : control + 1;
    if (!run && at + count > packed.length) throw new RangeError('a plane was cut short');
    for (let i = 0; i < count && to < end; i++, to += step) out[to] = packed[run ? at : at + i]!;
    at += run ? 1 : count;
  }
}
