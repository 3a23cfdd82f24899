import { deflateSync } from "node:zlib";

/**
 * Objects packed into streams, many into one, and the table of all objects as a stream: the library writes every object by itself and
 * in plain text, which for a structure of thousands of cells is more than all that is drawn.
 *
 * @source ISO 32000-1:2008, 7.5.7 object streams, 7.5.8 cross-reference streams, from memory
 */
export type PackedObjects = {
  /** A number for an object that is added later; it can be referred to from now on. */
  readonly number: () => number;
  readonly add: (number: number, text: string) => void;
};

type Reference = {
  readonly id: number;
  readonly data: { readonly Type?: string };
  buffer: readonly Uint8Array[];
  compress: boolean;
  finalize: () => void;
};
type Inner = {
  readonly _offsets: (number | null)[];
  readonly _root: object;
  readonly _info: object;
  readonly _id: Uint8Array;
  readonly _offset: number;
  readonly push: (data: null) => void;
  ref: (data: object) => Reference;
  _write: (data: Buffer | string) => void;
  _refEnd: (reference: Reference) => void;
  _finalize: () => void;
};
type Packed = { readonly number: number; readonly text: string };
type Place = readonly [kind: 1, offset: number, none: 0] | readonly [kind: 2, stream: number, index: number];

/** Objects in one stream: more are packed better, fewer are found sooner. */
const mostPacked = 10_000;

/** Lets a document take packed objects, and packs its own that are no streams; all are written when it ends. */
export function openPackedObjects(document: PDFKit.PDFDocument): PackedObjects {
  const inner: Inner = document as never; // the library's own fields have no types
  const packed: Packed[] = [];
  packOwn(inner, packed);
  inner._finalize = () => {
    const places = new Map(inner._offsets.map((offset, index): [number, Place] => [index + 1, [1, offset ?? 0, 0]]));
    packed.sort((a, b) => a.number - b.number);
    for (let first = 0; first < packed.length; first += mostPacked) {
      const some = packed.slice(first, first + mostPacked);
      const stream = inner._offsets.push(null);
      places.set(stream, [1, inner._offset, 0]);
      some.forEach((one, index) => {
        places.set(one.number, [2, stream, index]);
      });
      writePacked(inner, stream, some);
    }
    writePlaces(inner, places);
    inner.push(null);
  };
  return {
    number: () => inner._offsets.push(null),
    add: (number, text) => packed.push({ number, text }),
  };
}

/** Takes what the library would write of an object that is neither a stream nor a page, and packs streams closer than it does. */
function packOwn(inner: Inner, packed: Packed[]): void {
  const ref = inner.ref.bind(inner);
  inner.ref = (data) => {
    const reference = ref(data);
    const finalize = reference.finalize.bind(reference);
    reference.finalize = () => {
      if (reference.buffer.length > 0) {
        if (reference.compress) reference.buffer = [packedBytes(Buffer.concat(reference.buffer))];
        reference.compress = false;
        return finalize();
      }
      if (reference.data.Type === "Page") return finalize();
      const { _write: write, _refEnd: refEnd } = inner;
      const written: string[] = [];
      inner._write = (text) => written.push(String(text));
      inner._refEnd = () => {};
      finalize();
      Object.assign(inner, { _write: write, _refEnd: refEnd });
      packed.push({ number: reference.id, text: (written[1] ?? "").replaceAll("\n", " ") });
      inner._refEnd(reference);
    };
    return reference;
  };
}

function writePacked(inner: Inner, number: number, packed: readonly Packed[]): void {
  let offset = 0;
  const places = packed.map((one) => {
    const place = `${one.number} ${offset}`;
    offset += one.text.length + 1;
    return place;
  });
  const head = `${places.join(" ")}\n`;
  const body = Buffer.from(head + packed.map((one) => `${one.text}\n`).join(""), "latin1");
  writeStream(inner, number, `/Type /ObjStm /N ${packed.length} /First ${head.length}`, body);
}

const placeBytes = 7;

/** Where every object is: by itself at an offset, or in a stream at an index; each row as its difference from the one above. */
function writePlaces(inner: Inner, places: ReadonlyMap<number, Place>): void {
  const start = inner._offset;
  const number = inner._offsets.push(null);
  const rows = Buffer.alloc((number + 1) * (placeBytes + 1));
  let above = Buffer.alloc(placeBytes);
  for (let one = 0; one <= number; one += 1) {
    const [kind, place, index] = one === number ? [1, start, 0] : (places.get(one) ?? [0, 0, 0]);
    const row = Buffer.alloc(placeBytes);
    row.writeUInt8(kind, 0);
    row.writeUInt32BE(place, 1);
    row.writeUInt16BE(index, 5);
    const differences = row.map((byte, at) => byte - (above[at] ?? 0));
    rows.set([2, ...differences], one * (placeBytes + 1));
    above = row;
  }
  const id = `<${Buffer.from(inner._id).toString("hex")}>`;
  const told = `/Type /XRef /Size ${number + 1} /W [1 4 2] /Root ${inner._root} /Info ${inner._info} /ID [${id} ${id}]`;
  writeStream(inner, number, `${told} /DecodeParms << /Predictor 12 /Columns ${placeBytes} >>`, rows);
  inner._write(`startxref\n${start}\n%%EOF`);
}

function writeStream(inner: Inner, number: number, entries: string, body: Buffer): void {
  const data = packedBytes(body);
  inner._write(`${number} 0 obj\n<< ${entries} /Filter /FlateDecode /Length ${data.length} >>\nstream`);
  inner._write(data);
  inner._write("\nendstream\nendobj");
}

function packedBytes(bytes: Buffer): Buffer {
  return deflateSync(bytes, { level: 9, memLevel: 9 });
}
