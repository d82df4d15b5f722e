import { parseArgs } from 'node:util';

const USAGE = `Usage: npm start [-- OPTIONS]
  --empty      start without the demo, with a data folder of its own (as DEMO=0 does)
  --port N     listen on port N instead of 4180`;

export function readStartOptions(args) {
  try {
    const { values } = parseArgs({ args, options: { empty: { type: 'boolean', default: false }, port: { type: 'string' }, help: { type: 'boolean' } } });
    if (values.help) return { help: USAGE };
    if (values.port !== undefined && !(/^\d+$/.test(values.port) && values.port >= 1 && values.port <= 65_535)) {
      throw new Error(`--port must be a whole number from 1 to 65535, not ${values.port}.`);
    }
    return { empty: values.empty || ['0', 'false', 'no'].includes(process.env.DEMO), port: values.port };
  } catch (error) {
    throw new Error(`${error.message}\n${USAGE}`, { cause: error });
  }
}
