const began = performance.now();

export const elapsed = () => (performance.now() - began) / 1000;

/** One progress line with the time since this command began. */
export function say(message) {
  console.log(`[${elapsed().toFixed(1).padStart(6)} s] ${message}`);
}
