import { keepPackagedFonts } from '../fonts/keep-packaged-fonts';
import { startMailLoop } from '../mail/mail-loop';
import { mailLoaders } from '../revisions/mail-loaders';
import { startPictureWork } from '../revisions/picture-work';
import { onShutdown } from './on-shutdown';

/** Starts what runs beside the pages for as long as the server does, and has it stopped before the process ends. */
export function startBackground(): void {
  onShutdown('the outbox', startMailLoop(mailLoaders));
  onShutdown('pictures', startPictureWork());
  const kept = keepPackagedFonts().catch((error: unknown) => {
    console.error('The fonts that come with the app could not be kept; it is tried again at the next start.', error);
  });
  onShutdown('fonts', () => kept);
}
