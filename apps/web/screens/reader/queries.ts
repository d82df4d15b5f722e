import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { PackageScreen, packageList, readerReject, readerResult } from '#libs/contracts/screens/reader';
import { get, post, query } from '../../api/client.js';

const packageKey = (id: string) => ['package', id];

export const usePackages = (page: number) =>
  useQuery({ queryKey: ['packages', page], queryFn: () => get<z.infer<typeof packageList>>(`/reader/packages${query({ page })}`), placeholderData: keepPreviousData });

export const usePackage = (id: string) => useQuery({ queryKey: packageKey(id), queryFn: () => get<PackageScreen>(`/reader/packages/${id}`) });

/** Each answer of the reader comes back as the package it changed. */
function useAnswer<Body>(id: string, what: string) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: Body) => post<PackageScreen>(`/reader/packages/${id}/${what}`, body),
    onSuccess: (screen) => {
      queries.setQueryData(packageKey(id), screen);
      void queries.invalidateQueries({ queryKey: ['packages'] });
    },
  });
}

export const useAcknowledge = (id: string) => useAnswer<Record<string, never>>(id, 'acknowledge');
export const useSendBack = (id: string) => useAnswer<z.input<typeof readerReject>>(id, 'reject');
export const useSign = (id: string) => useAnswer<z.input<typeof readerResult>>(id, 'result');
