import { tooLarge } from '../../record-file/file-trouble';
import { type FileReading, openRecordReader } from '../../record-file/record-reader';

export type { FileReading };

/** The largest file that is looked into, in bytes, and the most text that a packed one may unpack to. */
const mostBytes = 100_000_000;
const mostText = 1_000_000_000;

/** Reads a file as it comes from the disk, piece by piece, so that the page goes on in between. */
export async function readFile(file: Blob): Promise<FileReading> {
  if (file.size >= mostBytes) return { trouble: tooLarge };
  const reader = openRecordReader();
  const decoder = new TextDecoder();
  let length = 0;
  try {
    const pieces = (await open(file)).getReader();
    for (let piece = await pieces.read(); !piece.done; piece = await pieces.read()) {
      const text = decoder.decode(piece.value, { stream: true });
      length += text.length;
      const trouble = length > mostText ? tooLarge : reader.take(text);
      if (trouble) {
        void pieces.cancel();
        return { trouble };
      }
      await pause();
    }
  } catch {
    // A packed file cut off or damaged; or one that went from the disk while it was read.
    return { trouble: { what: 'damaged', reason: 'The file is not whole: it cannot be read to its end.' } };
  }
  reader.take(decoder.decode());
  return reader.end();
}

/** The file's bytes, unpacked where it was packed. */
async function open(file: Blob): Promise<ReadableStream<Uint8Array<ArrayBuffer>>> {
  const [first, second] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  const isPacked = first === 0x1f && second === 0x8b;
  return isPacked ? file.stream().pipeThrough(new DecompressionStream('gzip')) : file.stream();
}

/** Lets the page do what waits. */
function pause(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}
