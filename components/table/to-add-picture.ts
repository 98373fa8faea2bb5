/** Goes to the slip that adds a picture, wherever it is on the page. */
export function toAddPicture(): void {
  const slip = document.getElementById('add-picture');
  slip?.scrollIntoView({ block: 'nearest' });
  slip?.focus({ preventScroll: true });
}
