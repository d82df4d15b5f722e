import sharp from 'sharp';
import { filmPixels } from '#libs/dicom/film-pixels';
import { dicomFile, pixels16, type DicomFile } from './files-support/dicom-file.js';

const three = (values: [number, number, number], file: Partial<DicomFile> = {}) => filmPixels(dicomFile({ rows: 1, columns: 3, pixels: pixels16(...values), ...file }), 'dicom');

describe('the pixels of a stored film', () => {
  it('are all of its values, counted from the least, and run from it to the greatest when no window is named', async () => {
    expect(await three([1000, 2000, 4000])).toEqual({ columns: 3, rows: 1, most: 3000, black: 0, white: 3000, negative: false, values: Uint16Array.of(0, 1000, 3000) });
  });

  // DICOM PS3.3 C.11.2.1.2.1: values up to c - 0.5 - (w - 1) / 2 are black, those above c - 0.5 + (w - 1) / 2 white; worked by hand.
  it('have the window that the file names, in their own numbers', async () => {
    expect(await three([1000, 2000, 4000], { window: { centre: 2048, width: 2049 } })).toMatchObject({ black: 23.5, white: 2071.5 });
    expect(await three([1000, 2000, 4000], { window: { centre: 2048, width: 2049 }, more: [[0x0028, 0x1052, 'DS', '-1000'], [0x0028, 0x1053, 'DS', '2']] })).toMatchObject({ black: 11.75, white: 1035.75 });
  });

  it('say so when low values are bright', async () => {
    expect((await three([1, 2, 3], { photometric: 'MONOCHROME1' })).negative).toBe(true);
  });

  it('may have been negative', async () => {
    expect((await three([-1000, 0, 1000], { signed: true, bitsStored: 12 })).values).toEqual(Uint16Array.of(0, 1000, 2000));
  });

  it('of a picture of 8 bits are shown as they are, and of one of 16 over all that is there', async () => {
    const eight = await sharp(Uint8Array.of(50, 100, 200), { raw: { width: 3, height: 1, channels: 1 } }).png().toBuffer();
    expect(await filmPixels(eight, 'png')).toMatchObject({ most: 150, black: -50, white: 205 });
    const sixteen = await sharp(Uint16Array.of(300, 1000, 4000), { raw: { width: 3, height: 1, channels: 1 } }).toColourspace('grey16').png().toBuffer();
    expect(await filmPixels(sixteen, 'png')).toMatchObject({ most: 3700, black: 0, white: 3700, values: Uint16Array.of(0, 700, 3700) });
  });
});
