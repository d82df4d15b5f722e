const { readFileSync } = require('node:fs');
const path = require('node:path');
const { transformSync } = require('@swc/core');

/** The server's pages need this package as CommonJS, which Node gives them and Jest does not. */
const file = path.join(__dirname, '../../node_modules/content-disposition/dist/index.js');
const { code } = transformSync(readFileSync(file, 'utf8'), { filename: file, swcrc: false, module: { type: 'commonjs' } });
new Function('exports', code)(exports);
