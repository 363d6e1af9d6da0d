/** A zip file from texts and bytes: deflated, without dates, so that the same files always make the same zip. */
import { crc32, deflateRawSync } from 'node:zlib';

/** 1 January 1980, the first day a zip knows. */
const day = 0x21;
/** Names are UTF-8. */
const flags = 0x0800;
const deflated = 8;

/** @param files name in the zip, with slashes, and bytes @returns the bytes of the zip */
export function zipOf(files) {
  const parts = [];
  const directory = [];
  let at = 0;
  for (const [name, bytes] of files) {
    const title = Buffer.from(name);
    const packed = deflateRawSync(bytes, { level: 9 });
    // What both records of a file say: flags, method, time, day, checksum, sizes, length of the name, nothing extra.
    const says = Buffer.alloc(24);
    says.writeUInt16LE(flags, 0);
    says.writeUInt16LE(deflated, 2);
    says.writeUInt16LE(0, 4);
    says.writeUInt16LE(day, 6);
    says.writeUInt32LE(crc32(bytes), 8);
    says.writeUInt32LE(packed.length, 12);
    says.writeUInt32LE(bytes.length, 16);
    says.writeUInt16LE(title.length, 20);
    // PK 3 4, made to be read by version 2.0.
    const local = Buffer.concat([Buffer.from([0x50, 0x4b, 3, 4, 20, 0]), says, title]);
    const entry = Buffer.alloc(14);
    entry.writeUInt32LE(at, 10);
    // PK 1 2, made by and to be read by version 2.0.
    directory.push(Buffer.concat([Buffer.from([0x50, 0x4b, 1, 2, 20, 0, 20, 0]), says, entry, title]));
    parts.push(local, packed);
    at += local.length + packed.length;
  }
  const list = Buffer.concat(directory);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(files.length, 8);
  end.writeUInt16LE(files.length, 10);
  end.writeUInt32LE(list.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...parts, list, end]);
}
