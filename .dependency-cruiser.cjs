// The house has floors, and an import never goes up. Tests may look wherever they need to.
const TEST = '\\.test\\.tsx?$';
const PARTS = ['words', 'science', 'contracts', 'pathway', 'platform', 'dicom', 'documents', 'fhir', 'register', 'steps'];

/** What each part may import beside itself. */
const floors = {
  words: [],
  science: ['words'],
  contracts: ['words'],
  pathway: ['words', 'science', 'contracts'],
  platform: ['words', 'science', 'contracts', 'pathway'],
  dicom: ['words', 'science', 'contracts', 'pathway'],
  documents: ['words', 'science', 'contracts', 'pathway'],
  fhir: ['words', 'science', 'contracts', 'pathway', 'dicom'],
  register: ['words', 'science', 'contracts', 'pathway', 'platform', 'dicom', 'documents'],
  steps: ['words', 'science', 'contracts', 'pathway', 'platform', 'dicom', 'documents', 'fhir', 'register'],
};

const pure = '^libs/(words|science|contracts|pathway|documents|dicom|fhir)/';
const error = (name, comment, from, to) => ({ name, severity: 'error', comment, from: { pathNot: TEST, ...from }, to });

function floorRule([part, below]) {
  const above = PARTS.filter((other) => other !== part && !below.includes(other));
  const reach = below.length ? `only ${below.join(', ')}` : 'no other part';
  return error(`floor-of-${part}`, `libs/${part} may import ${reach}.`, { path: `^libs/${part}/` }, { path: `^(libs/(${above.join('|')})/|apps/|seed/|test/)` });
}

module.exports = {
  forbidden: [
    ...Object.entries(floors).map(floorRule),
    // A type names a shape and is gone at run time: it may point back.
    error('no-circle', 'Two files that need each other to run are one file, or need a third.', {}, { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } }),
    error('apps-stay-apart', 'One app never imports another; what they share is a part of libs.', { path: '^apps/([^/]+)/' }, { path: '^apps/', pathNot: '^apps/$1/' }),
    // Circles follow a finger on the screen, so the page measures with the same pure functions that the server checks with.
    error('web-sees-contracts-only', 'The web app knows the server by its contracts; of the libraries it shares the measuring and the words alone.', { path: '^apps/web/' }, { path: '^(libs/(?!contracts/|words/|science/measurement/)|seed/|test/)' }),
    error('seed-is-not-imported', 'The demo is made by the program, never needed by it.', { path: '^(apps|libs)/' }, { path: '^(seed|test)/' }),
    error('prisma-in-database-only', 'Tenancy holds because one part alone can reach the tables.', { pathNot: `^libs/platform/database/|${TEST}` }, { path: '(^|/)node_modules/(@prisma|\\.prisma|prisma)/|^libs/platform/database/generated/' }),
    error('bullmq-in-queue-only', 'Jobs go through the typed registry.', { path: '^(apps|libs|seed)/', pathNot: `^libs/platform/queue/|${TEST}` }, { path: '(^|/)node_modules/bullmq/' }),
    error('pure-parts-know-no-server', 'These parts are functions of their arguments.', { path: pure }, { path: '(^|/)node_modules/(@nestjs|@prisma|fastify|@fastify|pg|bullmq|ioredis|nodemailer|rxjs)/|^(node:)?(http|https|net|child_process)$', pathNot: '/@types/' }),
    error('thinking-parts-read-no-file', 'Papers read their fonts; the others read nothing.', { path: '^libs/(words|science|contracts|pathway|fhir)/', pathNot: `^libs/pathway/examples/|${TEST}` }, { path: '^(node:)?fs(/promises)?$' }),
    error('no-development-package', 'What the program needs at run time is a dependency.', { path: '^(apps/(api|worker|gateway)|libs|seed)/' }, { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only'], pathNot: '(^|/)node_modules/@types/' }),
    // That package is types alone and has nothing to lead to.
    error('resolvable', 'Every import leads somewhere.', {}, { couldNotResolve: true, pathNot: '^@medplum/fhirtypes$' }),
  ],
  options: {
    doNotFollow: { path: 'node_modules|^libs/platform/database/generated/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['development', 'import', 'require', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.json', '.d.ts'],
    },
  },
};
