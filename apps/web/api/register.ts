import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { z } from 'zod';
import type { Authority, Twins, mergeDogs, newAuthority } from '#libs/contracts/people';
import type { Dog, DogListRow, NewDog, Person, newPerson } from '#libs/contracts/register';
import { get, post, query } from './client.js';

export const useDogs = (asked: { q?: string; page?: number }) =>
  useQuery({ queryKey: ['dogs', asked], queryFn: () => get<{ rows: DogListRow[]; more: boolean }>(`/dogs${query(asked)}`), placeholderData: keepPreviousData });

export const useDog = (dog: string | undefined) => useQuery({ queryKey: ['dog', dog], queryFn: () => get<Dog>(`/dogs/${dog}`), enabled: dog !== undefined });

export const usePeople = (q: string) =>
  useQuery({ queryKey: ['people', q], queryFn: () => get<{ rows: Person[] }>(`/people${query({ q })}`), enabled: q.trim().length >= 2, placeholderData: keepPreviousData });

export const usePeopleList = (asked: { q?: string; page?: number }) =>
  useQuery({ queryKey: ['people', 'list', asked], queryFn: () => get<{ rows: Person[]; more: boolean }>(`/people${query(asked)}`), placeholderData: keepPreviousData });

export const useBreeds = () => useQuery({ queryKey: ['breeds'], queryFn: () => get<string[]>('/breeds'), staleTime: Infinity });

export function useNewDog() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: NewDog) => post<Dog>('/dogs', body),
    onSuccess: (dog) => {
      queries.setQueryData(['dog', dog.id], dog);
      void queries.invalidateQueries({ queryKey: ['dogs'] });
    },
  });
}

/** Adds to a dog's dated lists: names, identifiers, people. */
export function useAddToDog(dog: string) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: ({ what, body }: { what: 'names' | 'identifiers' | 'people'; body: unknown }) => post<Dog>(`/dogs/${dog}/${what}`, body),
    onSuccess: (changed) => {
      queries.setQueryData(['dog', dog], changed);
      void queries.invalidateQueries({ queryKey: ['dogs'] });
    },
  });
}

export const useTwins = (page: number) => useQuery({ queryKey: ['dogs', 'twins', page], queryFn: () => get<Twins>(`/dog-twins${query({ page })}`), placeholderData: keepPreviousData });

export function useMergeDogs(kept: string) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: z.input<typeof mergeDogs>) => post<Dog>(`/dogs/${kept}/merge`, body),
    onSuccess: (dog) => {
      queries.setQueryData(['dog', dog.id], dog);
      void queries.invalidateQueries({ queryKey: ['dogs'] });
    },
  });
}

type Authorities = { rows: Authority[] };
export function useAuthorities(dog: string) {
  const queries = useQueryClient();
  const keep = (page: Authorities) => queries.setQueryData(['authorities', dog], page);
  const read = useQuery({ queryKey: ['authorities', dog], queryFn: () => get<Authorities>(`/dogs/${dog}/authorities`) });
  const add = useMutation({ mutationFn: (body: z.input<typeof newAuthority>) => post<Authorities>(`/dogs/${dog}/authorities`, body), onSuccess: keep });
  const end = useMutation({ mutationFn: (authority: string) => post<Authorities>(`/dogs/${dog}/authorities/${authority}/end`), onSuccess: keep });
  return { ...read, add, end };
}

export const useNewPerson = () => useMutation({ mutationFn: (body: z.input<typeof newPerson>) => post<Person>('/people', body) });
