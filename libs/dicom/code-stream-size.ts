export interface CodeStreamSize { width: number; height: number; components: number; bits: number }

const SIZ = 0xff51;
/** Frame headers of the JPEG kinds, JPEG-LS among them; C4, C8 and CC are no frames. */
const isFrame = (marker: number) => marker === 0xfff7 || (marker >= 0xffc0 && marker <= 0xffcf && ![0xffc4, 0xffc8, 0xffcc].includes(marker));

/** How large a code stream says its picture is; undefined where it does not say. Asked before a decoder is, which takes the memory that it is told. */
export function codeStreamSize(stream: Uint8Array): CodeStreamSize | undefined {
  const view = new DataView(stream.buffer, stream.byteOffset, stream.byteLength);
  for (let at = 2; at + 4 <= view.byteLength; ) {
    const marker = view.getUint16(at);
    if (marker < 0xff01) return undefined;
    if (marker === SIZ) return at + 43 <= view.byteLength ? sizeOfJpeg2000(view, at) : undefined;
    if (isFrame(marker)) return at + 10 <= view.byteLength ? { bits: view.getUint8(at + 4), height: view.getUint16(at + 5), width: view.getUint16(at + 7), components: view.getUint8(at + 9) } : undefined;
    at += 2 + Math.max(2, view.getUint16(at + 2));
  }
  return undefined;
}

/** ISO/IEC 15444-1 annex A.5.1: the grid's size less the image's offset in it. */
function sizeOfJpeg2000(view: DataView, at: number): CodeStreamSize {
  const number = (offset: number) => view.getUint32(at + offset);
  return { width: number(6) - number(14), height: number(10) - number(18), components: view.getUint16(at + 38), bits: (view.getUint8(at + 40) & 0x7f) + 1 };
}
