import net from 'node:net';

/** Opens the port on the loopback address for a moment; undefined when somebody else has it. */
function tryPort(port) {
  return new Promise((resolve, reject) => {
    const server = net.createServer();
    server.on('error', (error) => (['EADDRINUSE', 'EACCES'].includes(error.code) ? resolve(undefined) : reject(error)));
    server.listen(port, '127.0.0.1', () => {
      const { port: opened } = server.address();
      server.close(() => resolve(opened));
    });
  });
}

export const isFree = async (port) => (await tryPort(port)) !== undefined;
export const freePort = () => tryPort(0);
