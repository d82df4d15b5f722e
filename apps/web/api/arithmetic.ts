import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { DrugLine } from '#libs/contracts/actions/visit';
import { post } from './client.js';

export type Arithmetic = { lines: { words: string; steps: string[]; volume: string; back: string }[] };

/** The server computes what the vet wrote, both ways; the page computes nothing. */
export const useArithmetic = (asked: { weightKg: number; drugs: DrugLine[] } | null) =>
  useQuery({ queryKey: ['arithmetic', asked], queryFn: () => post<Arithmetic>('/sedation/arithmetic', asked), enabled: asked !== null, placeholderData: keepPreviousData, staleTime: Infinity });
