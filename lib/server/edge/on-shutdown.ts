type Closing = () => Promise<void> | void;

// Pages and server are bundled apart and so hold two copies of this module; they meet in the process.
const key = Symbol.for('yokemark.shutdown');
const process_ = globalThis as typeof globalThis & { [key]?: Map<string, Closing> };

function closings(): Map<string, Closing> {
  process_[key] ??= new Map();
  return process_[key];
}

/** Registers what must be closed before the process ends; a second registration under one name takes its place. */
export function onShutdown(name: string, close: Closing): void {
  closings().set(name, close);
}

/** Closes everything that was registered, last registered first; what fails to close is reported and passed over. */
export async function closeEverything(): Promise<void> {
  for (const [name, close] of [...closings()].reverse()) {
    closings().delete(name);
    try {
      await close();
    } catch (error) {
      console.error(`Closing ${name} failed.`, error);
    }
  }
}
