/** What each byte adds to the sum, worked out once: bit by bit for every byte of a file takes most of the time to read it. */
const bySteps = Uint16Array.from({ length: 256 }, (_, byte) => {
  let sum = byte << 8;
  for (let bit = 0; bit < 8; bit += 1) sum = (sum & 0x8000 ? (sum << 1) ^ 0x1021 : sum << 1) & 0xffff;
  return sum;
});

/**
 * Sum over bytes as SR-4731 files carry it at their end.
 *
 * @source CRC-16, polynomial 0x1021, initial 0xFFFF, no reflection, no final xor; from memory, with the usual check "123456789" to 0x29B1
 */
export function traceChecksum(bytes: Uint8Array): number {
  let sum = 0xffff;
  for (const byte of bytes) sum = ((sum << 8) & 0xffff) ^ (bySteps[(sum >> 8) ^ byte] ?? 0);
  return sum;
}
