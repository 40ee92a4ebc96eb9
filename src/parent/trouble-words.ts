/** Why something could not be recorded, as a plain sentence; what was typed is still on the page. */
export function troubleSentence(reason: unknown): string {
  return sentences.get(troubleWhat(reason) ?? '') ?? unknownSentence;
}

const unknownSentence =
  'This could not be stored just now. What you typed is still here. Try again; if it happens once more, load the page again.';

const sentences: ReadonlyMap<string, string> = new Map(
  Object.entries({
    refused:
      'This browser stores nothing here, as a private window does, so this could not be kept. What you typed is still on this page. Open Sumstitch in an ordinary window.',
    full: 'This device has no room left, so this could not be stored. What you typed is still here. Make some room and try again.',
    later:
      'A newer version of Sumstitch has been at work on this device. Load the page again to get it. Nothing stored is lost.',
    blocked:
      'Sumstitch is open in another tab with an older version. Close that tab and try again. What you typed is still here.',
    gone: 'The browser has closed its storage or erased it, so this could not be stored. Load the page again.',
    unknown: unknownSentence,
  }),
);

function troubleWhat(reason: unknown): string | null {
  if (typeof reason !== 'object' || reason === null) return null;
  // Both the thrown error and the state the desk shows carry the trouble's name.
  const carrier = 'trouble' in reason ? reason.trouble : reason;
  if (typeof carrier !== 'object' || carrier === null || !('what' in carrier)) return null;
  return typeof carrier.what === 'string' ? carrier.what : null;
}
