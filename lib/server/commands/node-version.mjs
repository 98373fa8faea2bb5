/**
 * Ends the process with a plain sentence when Node is older than what the dependencies run on.
 * Imports nothing and uses nothing new, so that an old Node gets as far as the sentence.
 */
export function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(
    `Yokemark needs Node 20.19 or newer, and this is Node ${process.versions.node}. Get a newer one from https://nodejs.org, then run this again.`,
  );
  process.exit(1);
}
