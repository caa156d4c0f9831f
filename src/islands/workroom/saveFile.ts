/** Saves bytes or text as a file of the device. */
export function saveFile(name: string, content: BlobPart | Blob, type: string): void {
  const address = URL.createObjectURL(content instanceof Blob ? content : new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads it after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
