/** A published share of the differences between dogs that their parents hand on, in one population. */
export interface PublishedHeritability {
  population: string;
  heritability: number;
  /** Standard error; null where the paper's abstract gives none. */
  standardError: number | null;
  citation: string;
}

const LEIGHTON = 'Leighton et al. PLoS ONE 2019;14:e0212544';
const TIKEKAR = 'Tikekar et al. N Z Vet J 2018;66:319-324';

/**
 * By protocol code, for the value that speaks for the dog. A heritability belongs to its population and its method:
 * those of one index reach from .15 to .83, so all are shown and none is taken for the scheme's own.
 */
export const publishedHeritabilities: Record<string, PublishedHeritability[]> = {
  hipLaxity: [
    { population: '195 German Shepherd Dogs of one colony, looser hip', heritability: 0.15, standardError: 0.28, citation: TIKEKAR },
    { population: 'the same 195 dogs, mean of both hips', heritability: 0.53, standardError: 0.36, citation: TIKEKAR },
    { population: '2,308 Golden Retrievers at 12 to 18 months', heritability: 0.59, standardError: null, citation: LEIGHTON },
    { population: '5,201 German Shepherd Dogs at 12 to 18 months', heritability: 0.6, standardError: null, citation: LEIGHTON },
    { population: '1,551 dogs of 17 breeds', heritability: 0.61, standardError: null, citation: 'Zhang et al. Am J Vet Res 2009;70:483-492' },
    { population: 'Golden Retriever litters on their parents', heritability: 0.64, standardError: null, citation: 'Smith et al., conference abstract of 2000' },
    { population: '4,987 Labradors at 12 to 18 months', heritability: 0.66, standardError: null, citation: LEIGHTON },
    { population: '215 Estrela Mountain Dogs, looser hip', heritability: 0.83, standardError: 0.11, citation: 'Ginja et al. Acta Vet Hung 2008;56:303-312' },
  ],
};

export interface PublishedCorrelation { population: string; ofGrade: number; ofValue: number; geneticCorrelation: number; citation: string }

/** By protocol code: how choosing by the grade of the extended view moves its value, towards the tighter where the grade is better. */
export const choosingByGrade: Record<string, PublishedCorrelation[]> = {
  hipLaxity: [
    { population: 'Labradors', ofGrade: 0.72, ofValue: 0.66, geneticCorrelation: 0.21, citation: LEIGHTON },
    { population: 'Golden Retrievers', ofGrade: 0.41, ofValue: 0.59, geneticCorrelation: 0.29, citation: LEIGHTON },
    { population: 'German Shepherd Dogs', ofGrade: 0.76, ofValue: 0.6, geneticCorrelation: 0.28, citation: LEIGHTON },
    { population: '17 breeds', ofGrade: 0.76, ofValue: 0.61, geneticCorrelation: 0.69, citation: 'Zhang et al. Am J Vet Res 2009;70:483-492' },
  ],
};
