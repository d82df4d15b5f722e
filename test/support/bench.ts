/** What a bench is given. */
export interface BenchContext {
  /** Notes one measurement; a ratio is ours ÷ the bare way, measured in the same run. */
  row(name: string, value: number, unit: string, ratio?: number): void;
  /** Whether what takes minutes and the network was asked for. */
  clone: boolean;
}
