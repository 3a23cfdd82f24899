/** What packet files say of themselves, so that no other file is taken for one. */
export const packetFormat = "strandwright field packet";

/** Of the file's shape; a file of another version is refused. */
export const packetVersion = 1;

/** Longest file that is read, characters. */
export const packetFileMostChars = 40_000_000;
