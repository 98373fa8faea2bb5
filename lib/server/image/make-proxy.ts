import { writeProxy } from './proxy';
import { openPicture, toPixels } from './quiet-sharp';

export type MakeProxyRequest = { readonly picturePath: string; readonly proxyPath: string };

/** Makes the small picture for screens anew from a kept picture. */
export async function makeProxy({ picturePath, proxyPath }: MakeProxyRequest): Promise<void> {
  await writeProxy(await toPixels(openPicture(picturePath)), proxyPath);
}
