import { execFileSync, spawnSync } from 'node:child_process';
import { join } from 'node:path';

/** A glyph as HarfBuzz's own program says it, font units. */
export type ReferenceGlyph = {
  readonly g: number;
  readonly ax: number;
  readonly dx: number;
  readonly dy: number;
};

export type ShapeReference = {
  readonly fontPath: string;
  /** Left out, the program finds them out by itself. */
  readonly direction?: 'ltr' | 'rtl';
  readonly script?: string;
  readonly before?: string;
  readonly after?: string;
};

/** Whether hb-shape, the HarfBuzz project's own program (Debian libharfbuzz-bin), is installed. */
export const hasHarfBuzzProgram = spawnSync('hb-shape', ['--version']).status === 0;

/** Every text shaped by hb-shape, each by itself, glyphs from left to right. Paths lie under node_modules. */
export function shapedByHarfBuzz(texts: readonly string[], reference: ShapeReference): ReferenceGlyph[][] {
  const { fontPath, direction, script, before, after } = reference;
  const said = execFileSync(
    'hb-shape',
    [
      ...['--no-glyph-names', '--no-clusters', '--output-format=json', '--language=und'],
      ...(direction ? [`--direction=${direction}`] : []),
      ...(script ? [`--script=${script}`] : []),
      ...(before ? [`--text-before=${before}`] : []),
      ...(after ? [`--text-after=${after}`] : []),
      ...['--text-file=-', join('node_modules', fontPath)],
    ],
    // It says the text before and after again on its error output.
    { encoding: 'utf8', input: texts.map((text) => `${text}\n`).join(''), stdio: ['pipe', 'pipe', 'ignore'] },
  );
  const lines = said.trim().split('\n');
  if (lines.length !== texts.length) throw new Error(`hb-shape gave ${lines.length} lines for ${texts.length} texts`);
  return lines.map((line) =>
    (JSON.parse(line) as Partial<ReferenceGlyph>[]).map(({ g = 0, ax = 0, dx = 0, dy = 0 }) => ({ g, ax, dx, dy })),
  );
}
