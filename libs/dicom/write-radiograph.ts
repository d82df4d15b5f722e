import dcmjs from 'dcmjs';
import { dicomDay, dogAttributes, latin, type DicomDog } from './dog-attributes.js';
import { rangeOf } from './grey-window.js';
import { EXPLICIT } from './syntaxes.js';
import { beamOf } from './view-codes.js';
import { IMPLEMENTATION, newUid, sopClasses } from './uids.js';

export interface Radiograph {
  dog: DicomDog;
  studyUid: string;
  seriesUid: string;
  sopUid?: string;
  accession: string;
  /** YYYY-MM-DD and HH:MM:SS, on the practice's clock. */
  day: string;
  time: string;
  instance: number;
  region: 'hip' | 'elbow';
  side: 'left' | 'right' | 'both';
  view: { code: string; label: string };
  /** Where the picture's right and its foot point to, in the letters for quadrupeds: LE and CD of a dog on its back. */
  orientation?: [string, string];
  pixels: { rows: number; columns: number; bits: number; values: Uint8Array | Uint16Array; lossy?: { ratio: number } };
  /** Millimetres at the detector, rows then columns; without them the picture is no Digital X-Ray object, only a captured picture. */
  spacing?: [number, number];
  /** Made of a picture that a person exported: derived, as the standard calls it. */
  exported?: boolean;
  manufacturer: string;
  technique?: { kv?: number; mas?: number; exposureIndex?: number; targetExposureIndex?: number; deviationIndex?: number };
}

const code = (value: string, scheme: string, meaning: string) => ({ CodeValue: value, CodingSchemeDesignator: scheme, CodeMeaning: meaning });
/** DICOM PS3.16, context group 4031; the numbers of SNOMED CT that DICOM lists. */
const REGIONS = { hip: code('24136001', 'SCT', 'Hip joint'), elbow: code('16953009', 'SCT', 'Elbow joint') };
const SIDES = { left: 'L', right: 'R', both: 'B' } as const;

dcmjs.log.setLevel('error');

/** A file of one radiograph: Digital X-Ray for presentation, or a secondary capture where nothing is known of its size. */
export function writeRadiograph(film: Radiograph): Buffer {
  const sopClass = film.spacing ? sopClasses.dxForPresentation : sopClasses.secondaryCapture;
  const sopUid = film.sopUid ?? newUid();
  const data: Record<string, unknown> = {
    SpecificCharacterSet: 'ISO_IR 192', SOPClassUID: sopClass, SOPInstanceUID: sopUid,
    ...dogAttributes(film.dog),
    StudyInstanceUID: film.studyUid, StudyDate: dicomDay(film.day), StudyTime: film.time.replaceAll(':', ''), StudyID: '', AccessionNumber: film.accession, ReferringPhysicianName: '',
    SeriesInstanceUID: film.seriesUid, SeriesNumber: '1', InstanceNumber: String(film.instance),
    AcquisitionDate: dicomDay(film.day), AcquisitionTime: film.time.replaceAll(':', ''), ContentDate: dicomDay(film.day), ContentTime: film.time.replaceAll(':', ''),
    Manufacturer: film.manufacturer, ProtocolName: latin(film.view.label).slice(0, 64), AnatomicalOrientationType: 'QUADRUPED', PatientOrientation: film.orientation ?? '', BurnedInAnnotation: 'YES',
    PerformedProtocolCodeSequence: [code(film.view.code, '99COTYLA', latin(film.view.label).slice(0, 64))], ...viewAttributes(film),
    ...(film.spacing ? dxAttributes(film, film.spacing) : { Modality: 'OT', ConversionType: 'WSD', ImageType: ['DERIVED', 'SECONDARY'], Laterality: film.side === 'both' ? '' : SIDES[film.side] }),
    ...pixelAttributes(film.pixels),
    _vrMap: { PixelData: 'OW' },
  };
  const meta = { FileMetaInformationVersion: new Uint8Array([0, 1]).buffer, MediaStorageSOPClassUID: sopClass, MediaStorageSOPInstanceUID: sopUid, TransferSyntaxUID: EXPLICIT, ImplementationClassUID: IMPLEMENTATION.uid, ImplementationVersionName: IMPLEMENTATION.version };
  const { DicomDict, DicomMetaDictionary } = dcmjs.data;
  const file = new DicomDict(DicomMetaDictionary.denaturalizeDataset(meta));
  file.dict = DicomMetaDictionary.denaturalizeDataset(data);
  return Buffer.from(file.write());
}

function viewAttributes({ region, view }: Radiograph): Record<string, unknown> {
  const beam = beamOf(view.code);
  return {
    AnatomicRegionSequence: [REGIONS[region]],
    ...(beam && { ViewPosition: beam.position, ViewCodeSequence: [code(beam.code.value, beam.code.scheme, beam.code.meaning)] }),
  };
}

function dxAttributes({ side, technique = {}, pixels, exported }: Radiograph, spacing: [number, number]): Record<string, unknown> {
  const { kv, mas, exposureIndex, targetExposureIndex, deviationIndex } = technique;
  const given = { KVP: kv, ExposureIndex: exposureIndex, TargetExposureIndex: targetExposureIndex, DeviationIndex: deviationIndex };
  return {
    Modality: 'DX', PresentationIntentType: 'FOR PRESENTATION', ImageType: [exported ? 'DERIVED' : 'ORIGINAL', 'PRIMARY', ''],
    ImageLaterality: SIDES[side], AcquisitionContextSequence: [], DetectorType: '', PositionerType: '', ImagerPixelSpacing: spacing.map(String),
    PixelIntensityRelationship: 'LOG', PixelIntensityRelationshipSign: -1, RescaleIntercept: '0', RescaleSlope: '1', RescaleType: 'US', PresentationLUTShape: 'IDENTITY',
    ...windowOf(pixels, exported),
    ...Object.fromEntries(Object.entries(given).flatMap(([key, value]) => (value === undefined ? [] : [[key, String(value)]]))),
    ...(mas !== undefined && { ExposureInuAs: String(Math.round(mas * 1000)) }),
  };
}

/** All that the bits can hold; of a picture of 16, only what is there: films of 12 bits that are kept in 16 would come out black. DICOM PS3.3 C.11.2.1.2 leaves half a value at either end. */
function windowOf({ bits, values }: Radiograph['pixels'], exported = false): { WindowCenter: string; WindowWidth: string } {
  const { least, most } = bits < 16 || !exported ? { least: 0, most: 2 ** bits - 1 } : rangeOf(values);
  return { WindowCenter: String((least + most + 1) / 2), WindowWidth: String(most - least + 1) };
}

function pixelAttributes({ rows, columns, bits, values, lossy }: Radiograph['pixels']): Record<string, unknown> {
  const bytes = new Uint8Array(values.length * values.BYTES_PER_ELEMENT + ((values.length * values.BYTES_PER_ELEMENT) % 2));
  bytes.set(new Uint8Array(values.buffer, values.byteOffset, values.byteLength));
  const allocated = values.BYTES_PER_ELEMENT * 8;
  return {
    SamplesPerPixel: 1, PhotometricInterpretation: 'MONOCHROME2', Rows: rows, Columns: columns, BitsAllocated: allocated, BitsStored: bits, HighBit: bits - 1, PixelRepresentation: 0,
    LossyImageCompression: lossy ? '01' : '00', ...(lossy && { LossyImageCompressionRatio: lossy.ratio.toFixed(1), LossyImageCompressionMethod: 'ISO_10918_1' }),
    PixelData: [bytes.buffer],
  };
}
