import type { Fix } from "./rule.ts";

/**
 * Our strand at another height on its pole; none where the pole has no attachment of ours to move, or the height is
 * under ground.
 */
export function strandHeightFix(ourAttachmentId: string | null, heightM: number): readonly Fix[] {
  if (ourAttachmentId === null || !(heightM > 0)) return [];
  return [
    {
      label: "Move our strand clear of it",
      command: "attachment.set",
      input: { attachmentId: ourAttachmentId, heightM },
    },
  ];
}
