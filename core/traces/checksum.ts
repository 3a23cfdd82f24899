/**
 * Sum over bytes as SR-4731 files carry it at their end.
 *
 * @source CRC-16, polynomial 0x1021, initial 0xFFFF, no reflection, no final xor; from memory, with the usual check "123456789" to 0x29B1
 */
export function traceChecksum(bytes: Uint8Array): number {
  let sum = 0xffff;
  for (const byte of bytes) {
    sum ^= byte << 8;
    for (let bit = 0; bit < 8; bit += 1) sum = (sum & 0x8000 ? (sum << 1) ^ 0x1021 : sum << 1) & 0xffff;
  }
  return sum;
}
