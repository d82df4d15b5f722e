declare module 'autocannon' {
  interface Options { url: string; headers?: Record<string, string>; connections: number; duration: number; workers?: number }
  interface Result { requests: { average: number }; non2xx: number; errors: number }
  export default function autocannon(options: Options): Promise<Result>;
}
