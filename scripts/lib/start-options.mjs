import { parseArgs } from 'node:util';

const USAGE = `Usage: npm start [-- OPTIONS]
  --empty      start without the demo, with a data folder of its own (as DEMO=0 does)
  --port N     listen on port N instead of 4180
  --gateway-port N
               X-ray machines call port N instead of 11112`;

export function readStartOptions(args) {
  try {
    const { values } = parseArgs({ args, options: { empty: { type: 'boolean', default: false }, port: { type: 'string' }, 'gateway-port': { type: 'string' }, help: { type: 'boolean' } } });
    if (values.help) return { help: USAGE };
    for (const option of ['port', 'gateway-port']) checkPort(option, values[option]);
    return { empty: values.empty || ['0', 'false', 'no'].includes(process.env.DEMO), port: values.port, gatewayPort: values['gateway-port'] };
  } catch (error) {
    throw new Error(`${error.message}\n${USAGE}`, { cause: error });
  }
}

function checkPort(option, value) {
  if (value === undefined || (/^\d+$/.test(value) && value >= 1 && value <= 65_535)) return;
  throw new Error(`--${option} must be a whole number from 1 to 65535, not ${value}.`);
}
