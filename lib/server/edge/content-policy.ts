type PolicyOptions = {
  /** Random for each response; only scripts and styles that carry it run. */
  nonce: string;
  /** Whether the page may compile WebAssembly (the bench shapes lettering in the browser; the customer's pages do not). */
  wasm: boolean;
  /** The development server evaluates code and injects styles as it goes. */
  development: boolean;
};

/** The Content-Security-Policy of a page (CSP Level 3). */
export function contentPolicy({ nonce, wasm, development }: PolicyOptions): string {
  const scripts = ["'self'", `'nonce-${nonce}'`, "'strict-dynamic'"];
  if (wasm) scripts.push("'wasm-unsafe-eval'");
  if (development) scripts.push("'unsafe-eval'");
  // A nonce would switch 'unsafe-inline' off.
  const styles = development ? ["'self'", "'unsafe-inline'"] : ["'self'", `'nonce-${nonce}'`];
  const directives: Record<string, readonly string[]> = {
    'default-src': ["'self'"],
    'script-src': scripts,
    'style-src': styles,
    'img-src': ["'self'", 'data:', 'blob:'],
    'font-src': ["'self'"],
    'connect-src': ["'self'"],
    'object-src': ["'none'"],
    'frame-src': ["'none'"],
    'frame-ancestors': ["'none'"],
    'base-uri': ["'none'"],
    'form-action': ["'self'"],
  };
  return Object.entries(directives)
    .map(([name, sources]) => `${name} ${sources.join(' ')}`)
    .join('; ');
}
