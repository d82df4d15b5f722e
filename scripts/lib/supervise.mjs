/** Returns when told to stop; fails when one of the watched ends by itself. `whenUp` is cut short by either. */
export async function supervise(watched, stop, whenUp) {
  const over = new AbortController();
  const told = new Promise((resolve) => {
    if (stop.aborted) resolve(undefined);
    stop.addEventListener('abort', () => resolve(undefined), { once: true });
  });
  const first = Promise.race([told, ...watched.map(({ name, ended }) => ended.then((how) => `The ${name} ${how}; stopping the rest.`))]);
  try {
    const up = whenUp(AbortSignal.any([stop, over.signal])).then(() => first);
    const problem = await Promise.race([first, up]);
    if (problem && !stop.aborted) throw new Error(problem);
  } finally {
    over.abort();
  }
}
