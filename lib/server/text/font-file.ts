import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The bytes of a whole font file inside an installed package, such as `@scope/name/700Bold/Name_700Bold.ttf`. */
export function readPackagedFont(pathInPackages: string): Uint8Array {
  let folder = process.cwd();
  while (!existsSync(join(folder, 'node_modules', pathInPackages))) {
    const parent = dirname(folder);
    if (parent === folder) {
      throw new Error(`The font ${pathInPackages} is not under node_modules of ${process.cwd()}. Run npm install.`);
    }
    folder = parent;
  }
  return readFileSync(join(folder, 'node_modules', pathInPackages));
}
