import { startMailLoop } from '../mail/mail-loop';
import { mailLoaders } from '../revisions/mail-loaders';
import { startPictureWork } from '../revisions/picture-work';
import { onShutdown } from './on-shutdown';

/** Starts what runs beside the pages for as long as the server does, and has it stopped before the process ends. */
export function startBackground(): void {
  onShutdown('the outbox', startMailLoop(mailLoaders));
  onShutdown('pictures', startPictureWork());
}
