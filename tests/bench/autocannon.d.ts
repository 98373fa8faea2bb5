// What the benches use of autocannon, which ships no types.
declare module 'autocannon' {
  type Options = { url: string; connections: number; duration: number };
  type Result = {
    requests: { average: number; total: number };
    latency: { p99: number };
    errors: number;
    timeouts: number;
    non2xx: number;
  };
  const autocannon: (options: Options) => Promise<Result>;
  export = autocannon;
}
