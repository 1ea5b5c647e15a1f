/*
 * How much a zip archive holds, from its central directory alone (PKWARE APPNOTE 6.3, sections 4.3.12 and 4.3.16). The reader of workbooks unpacks no entry
 * beyond the size that is declared there, so that a small file cannot become a large one.
 */

const END_OF_DIRECTORY = 0x06054b50;
const ENTRY = 0x02014b50;
const END_BYTES = 22;
const ENTRY_BYTES = 46;
const LONGEST_COMMENT = 0xffff;
/** Stands for a size that is in an extra field, of an archive beyond 4 GB. */
const ELSEWHERE = 0xffffffff;

/** @returns the bytes that its entries unpack to, as declared; `undefined` where it is no archive that can be bounded */
export function unpackedSize(archive: Uint8Array): number | undefined {
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength);
  const end = endOfDirectory(view);
  if (end === undefined) return undefined;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  let total = 0;
  for (let entry = 0; entry < count; entry++) {
    if (at + ENTRY_BYTES > end || view.getUint32(at, true) !== ENTRY) return undefined;
    const packed = view.getUint32(at + 20, true);
    const unpacked = view.getUint32(at + 24, true);
    // An entry that is packed to something and declares nothing would not be bounded.
    if (unpacked === ELSEWHERE || packed === ELSEWHERE || (unpacked === 0 && packed > 2)) return undefined;
    total += unpacked;
    at +=
      ENTRY_BYTES +
      view.getUint16(at + 28, true) +
      view.getUint16(at + 30, true) +
      view.getUint16(at + 32, true);
  }
  return total;
}

function endOfDirectory(view: DataView): number | undefined {
  const last = view.byteLength - END_BYTES;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--)
    if (view.getUint32(at, true) === END_OF_DIRECTORY) return at;
  return undefined;
}
