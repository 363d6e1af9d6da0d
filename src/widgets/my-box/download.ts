/** Hands the reader a file made on the page. */
export function download(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers read the file only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
