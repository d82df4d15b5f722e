declare module 'dcmjs' {
  interface Dict {
    dict: Record<string, unknown>;
    write(): ArrayBuffer;
  }
  export const data: {
    DicomDict: new (meta: Record<string, unknown>) => Dict;
    DicomMetaDictionary: { dictionary: Record<string, { vr: string } | undefined>; denaturalizeDataset(dataset: Record<string, unknown>): Record<string, unknown>; uid(): string; dictionary: Record<string, { vr: string } | undefined> };
    DicomMessage: { readFile(content: ArrayBuffer, options?: { ignoreErrors?: boolean; untilTag?: string; noCopy?: boolean }): { meta: Record<string, Element>; dict: Record<string, Element>; write(): ArrayBuffer } };
  };
  export interface Element { vr: string; Value?: unknown[] }
  export const log: { setLevel(level: string): void };
  const dcmjs: { data: typeof data; log: typeof log };
  export default dcmjs;
}
