import { createHash } from "node:crypto";
import { z } from "zod";
import { BANK_VERSION } from "../circuit/bank.ts";
import type { BankRequest } from "../circuit/bank-build.ts";
import type { Block } from "../circuit/block.ts";
import type { CircuitNetwork } from "../domain/circuit.ts";

/** First bytes of a bank file. */
const MARK = "turnrow-bank\n";
const DIGEST_BYTES = 32;
const LENGTH_BYTES = 4;

const Header = z.array(
  z.object({
    hypothesis: z.string(),
    machines: z.number().int().positive(),
    codes: z.array(z.string()),
    readings: z.array(z.string()),
  }),
);

/** Names a bank by everything it follows from: circuit, model version and request. */
export function bankKey(network: CircuitNetwork, request: BankRequest): string {
  const whole = JSON.stringify([BANK_VERSION, network, request]);
  return createHash("sha256").update(whole).digest("hex").slice(0, 24);
}

/** Packs blocks: mark, digest of the rest, length of the header, header, then the raw numbers. */
export function packBlocks(blocks: readonly Block[]): Buffer {
  const header = Buffer.from(
    JSON.stringify(
      blocks.map(({ hypothesis, machines, codes, readings }) => {
        return {
          ...{ hypothesis, machines },
          codes: Object.keys(codes),
          readings: Object.keys(readings),
        };
      }),
    ),
  );
  const length = Buffer.alloc(LENGTH_BYTES);
  length.writeUInt32LE(header.length);
  const numbers = blocks.flatMap(({ noticed, codes, readings }) => [
    Buffer.from(noticed),
    ...Object.values(codes).map((list) => Buffer.from(list)),
    ...Object.values(readings).map((list) => littleEndian(list)),
  ]);
  const body = Buffer.concat([length, header, ...numbers]);
  return Buffer.concat([Buffer.from(MARK), createHash("sha256").update(body).digest(), body]);
}

/**
 * Unpacks what `packBlocks` packed.
 * @returns nothing where the bytes are cut short or changed
 */
export function unpackBlocks(bytes: Buffer): Block[] | undefined {
  const start = MARK.length + DIGEST_BYTES;
  if (bytes.length < start + LENGTH_BYTES) return undefined;
  if (bytes.subarray(0, MARK.length).toString() !== MARK) return undefined;
  const body = bytes.subarray(start);
  const digest = createHash("sha256").update(body).digest();
  if (!digest.equals(bytes.subarray(MARK.length, start))) return undefined;
  const headerEnd = LENGTH_BYTES + body.readUInt32LE(0);
  const header = Header.safeParse(JSON.parse(body.subarray(LENGTH_BYTES, headerEnd).toString()));
  if (!header.success) return undefined;
  let at = headerEnd;
  const take = (length: number): Buffer => {
    at += length;
    return body.subarray(at - length, at);
  };
  return header.data.map(({ hypothesis, machines, codes, readings }) => ({
    hypothesis,
    machines,
    noticed: Uint8Array.from(take(machines)),
    codes: Object.fromEntries(codes.map((key) => [key, Uint8Array.from(take(machines))])),
    readings: Object.fromEntries(readings.map((key) => [key, readInts(take(2 * machines))])),
  }));
}

/** Nearly every machine keeps numbers as the file does: then they are copied whole. */
const IS_LITTLE_ENDIAN = new Uint8Array(Uint16Array.of(1).buffer)[0] === 1;

function littleEndian(list: Int16Array): Buffer {
  if (IS_LITTLE_ENDIAN) return Buffer.from(list.buffer, list.byteOffset, list.byteLength);
  const bytes = Buffer.alloc(2 * list.length);
  list.forEach((value, i) => void bytes.writeInt16LE(value, 2 * i));
  return bytes;
}

function readInts(bytes: Buffer): Int16Array {
  if (!IS_LITTLE_ENDIAN) {
    return Int16Array.from({ length: bytes.length / 2 }, (_, i) => bytes.readInt16LE(2 * i));
  }
  // A copy, since the bytes need not lie on even addresses.
  return new Int16Array(Uint8Array.from(bytes).buffer);
}

/** Bytes a bank takes in memory. */
export function bankBytes(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { machines, codes, readings }) => {
    const lists = 1 + Object.keys(codes).length + 2 * Object.keys(readings).length;
    return sum + machines * lists;
  }, 0);
}
