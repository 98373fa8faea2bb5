import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { PDFiumLibrary } from '@hyzyla/pdfium';

/** As much memory as drawing one page may take: a page at the limit of pixels, its file, and pictures in it. */
export const MOST_HEAP_BYTES = 900 * 1024 * 1024;

/** PDFium in memory of its own. */
export type Pdfium = {
  readonly library: PDFiumLibrary;
  /** Whether it asked for more memory than it may have; what it made of the page is then worth nothing. */
  readonly ranOut: () => boolean;
};

let compiled: Promise<WebAssembly.Module> | null = null;

function compile(): Promise<WebAssembly.Module> {
  compiled ??= readFile(createRequire(import.meta.url).resolve('@hyzyla/pdfium/pdfium.wasm')).then((bytes) =>
    WebAssembly.compile(new Uint8Array(bytes)),
  );
  return compiled;
}

type GrowHeap = (bytes: number) => number;

/**
 * Starts PDFium, anew for each file: what one file did to it cannot reach the next. A page can ask for memory without end by
 * drawing itself in itself, so growing past a limit is refused where its code asks the host for more.
 */
export async function openPdfium(mostHeapBytes: number): Promise<Pdfium> {
  const module = await compile();
  let ranOut = false;
  const library = await PDFiumLibrary.init({
    instantiateWasm: (imports, done) => {
      const env = imports.env as Record<string, WebAssembly.ImportValue>;
      const grow = env.emscripten_resize_heap as GrowHeap;
      const limited: GrowHeap = (bytes) => {
        ranOut ||= bytes >>> 0 > mostHeapBytes;
        return ranOut ? 0 : grow(bytes);
      };
      const limitedImports = { ...imports, env: { ...env, emscripten_resize_heap: limited } };
      // The wrapper calls what it is given here a module; what is waited for is the instance (Emscripten, instantiateWasm).
      const ready = done as unknown as (instance: WebAssembly.Instance) => void;
      void WebAssembly.instantiate(module, limitedImports).then(ready);
      return {};
    },
  });
  return { library, ranOut: () => ranOut };
}
