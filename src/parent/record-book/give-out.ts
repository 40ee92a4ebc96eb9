/** How a file left the page. `givenUp`: the share sheet was closed again. */
export type GivenOut = 'shared' | 'downloaded' | 'givenUp';

/** Hands a file over: to the share sheet where the device takes files there, else as a download. */
export async function giveOut(file: File): Promise<GivenOut> {
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file] });
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'givenUp';
      // Not every device shares this kind of file, or so long after the tap.
    }
  }
  download(file);
  return 'downloaded';
}

/** Lets the browser put a file among its downloads. */
export function download(file: File): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  // Taken back at once, some browsers would save nothing.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
