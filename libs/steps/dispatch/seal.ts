import { useCase } from '../record/use-case.js';
import { sealPackage } from './seal-package.js';

export const seal = useCase('seal', (work, on) => sealPackage(work, on));
