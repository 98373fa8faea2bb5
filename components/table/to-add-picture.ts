/** Goes to the slip that adds a picture, wherever it is on the page. */
export function toAddPicture(): void {
  goTo('add-picture');
}

/** Goes to the slip that adds lettering. */
export function toAddLettering(): void {
  goTo('add-lettering');
}

function goTo(id: string): void {
  const slip = document.getElementById(id);
  slip?.scrollIntoView({ block: 'nearest' });
  slip?.focus({ preventScroll: true });
}
