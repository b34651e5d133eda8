/** Text of bytes that are UTF-8, with its byte order mark. Node loads its decoder of other codes when one is made, which takes a millisecond of a start. */
export const utf8 = (bytes: Uint8Array): string => Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('utf8')
